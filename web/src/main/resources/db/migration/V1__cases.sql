-- A case. Its document is in the revision of the same version.
create table case_file (
    id text primary key,
    version integer not null,
    archived integer not null default 0,
    -- For the list alone; 0 where the document can't be read.
    machines integer not null default 0,
    crews integer not null default 0
) strict;

-- Every state a case has been in. Nothing here is ever changed.
create table revision (
    case_id text not null references case_file (id) on delete cascade,
    version integer not null,
    kind text not null,
    -- The version that first held this document: this one, or the one that an undo or redo went to.
    stands_for integer not null,
    -- The version undo goes back to; null for the first.
    parent integer,
    name text not null,
    text text not null,
    what text not null,
    at text not null,
    primary key (case_id, version)
) strict;

create table setting (
    name text primary key,
    value text not null
) strict;
