-- Rows are added and never changed or taken away.

create function only_added_to() returns trigger language plpgsql as $$
begin
    raise exception 'the field book is only ever added to';
end
$$;

create trigger entry_no_change before update or delete or truncate on entry
    for each statement execute function only_added_to();

create trigger photo_no_change before update or delete or truncate on photo
    for each statement execute function only_added_to();

create trigger photo_name_no_change before update or delete or truncate on photo_name
    for each statement execute function only_added_to();

create trigger aside_no_change before update or delete or truncate on aside
    for each statement execute function only_added_to();
