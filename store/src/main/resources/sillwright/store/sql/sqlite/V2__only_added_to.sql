-- Rows are added and never changed or taken away. A replacing insert would take one away unseen, so it is refused too.

pragma application_id = 1397312588;

create trigger entry_no_update before update on entry
begin
    select raise(abort, 'the field book is only ever added to');
end;

create trigger entry_no_delete before delete on entry
begin
    select raise(abort, 'the field book is only ever added to');
end;

create trigger entry_no_replace before insert on entry
when exists (select 1 from entry where (place = new.place) or (building = new.building and id = new.id and digest = new.digest))
begin
    select raise(abort, 'the field book is only ever added to');
end;

create trigger photo_no_update before update on photo
begin
    select raise(abort, 'the field book is only ever added to');
end;

create trigger photo_no_delete before delete on photo
begin
    select raise(abort, 'the field book is only ever added to');
end;

create trigger photo_no_replace before insert on photo
when exists (select 1 from photo where sha256 = new.sha256)
begin
    select raise(abort, 'the field book is only ever added to');
end;

create trigger photo_name_no_update before update on photo_name
begin
    select raise(abort, 'the field book is only ever added to');
end;

create trigger photo_name_no_delete before delete on photo_name
begin
    select raise(abort, 'the field book is only ever added to');
end;

create trigger photo_name_no_replace before insert on photo_name
when exists (select 1 from photo_name where building = new.building and file = new.file and sha256 = new.sha256)
begin
    select raise(abort, 'the field book is only ever added to');
end;

create trigger aside_no_update before update on aside
begin
    select raise(abort, 'the field book is only ever added to');
end;

create trigger aside_no_delete before delete on aside
begin
    select raise(abort, 'the field book is only ever added to');
end;

create trigger aside_no_replace before insert on aside
when exists (select 1 from aside where building = new.building and sha256 = new.sha256)
begin
    select raise(abort, 'the field book is only ever added to');
end;
