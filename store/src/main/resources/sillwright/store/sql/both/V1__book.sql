-- The field book, the same on SQLite and PostgreSQL. Rows are added and never changed: V2 sees to it.
-- A picture's type is called bytea, which PostgreSQL knows and SQLite takes as a name without a meaning.

-- One entry. Its place is the order of arrival, without a gap; its digest is the SHA-256 of what it said.
-- Two entries that share an id and say different things are both kept.
create table entry (
    place       integer      not null primary key,
    building    varchar(100) not null,
    id          varchar(100) not null,
    digest      char(64)     not null,
    wall_ms     bigint       not null,
    tick        integer      not null,
    device      varchar(100) not null,
    said        text         not null,
    received_ms bigint       not null,
    unique (building, id, digest)
);

create index entry_arrived on entry (building, place);
create index entry_by_device on entry (device, wall_ms, tick);
create index entry_by_clock on entry (wall_ms, tick);

-- A picture, once, however often it arrives: its key is the SHA-256 of its bytes.
create table photo (
    sha256      char(64)    not null primary key,
    media       varchar(40) not null,
    bytes       bytea       not null,
    received_ms bigint      not null
);

-- What a survey calls a picture: photos/post-3.jpg.
create table photo_name (
    building    varchar(100) not null,
    file        varchar(300) not null,
    sha256      char(64)     not null,
    received_ms bigint       not null,
    primary key (building, file, sha256)
);

-- What could not be read as an entry, kept as it came until somebody mends it.
create table aside (
    building    varchar(100) not null,
    sha256      char(64)     not null,
    bytes       bytea        not null,
    received_ms bigint       not null,
    primary key (building, sha256)
);
