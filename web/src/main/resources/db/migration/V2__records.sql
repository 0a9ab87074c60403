-- What a shop wrote down, kept with its case. Nothing here is ever changed but marks; what is no longer to count is
-- marked as laid away or taken back.

-- Counts every change of a case's records.
create table record_state (
    case_id text primary key references case_file (id) on delete cascade,
    version integer not null
) strict;

-- A sheet as it came.
create table record_sheet (
    id integer primary key,
    case_id text not null references case_file (id) on delete cascade,
    -- Made by the sender, so that what is sent twice is kept once.
    sent_as text not null,
    name text not null,
    content blob not null,
    -- Its headers by the columns they stand for, as JSON.
    mapping text not null default '{}',
    archived integer not null default 0,
    at text not null,
    unique (case_id, sent_as)
) strict;

-- What is to stand in cells of a row instead, as JSON; no cells leave the row out.
create table record_mend (
    id integer primary key,
    sheet_id integer not null references record_sheet (id) on delete cascade,
    line integer not null,
    cells text not null,
    undone integer not null default 0,
    at text not null
) strict;

create index record_mend_of_sheet on record_mend (sheet_id);

-- A row written on the page, by the columns of records, as JSON.
create table record_entry (
    id integer primary key,
    case_id text not null references case_file (id) on delete cascade,
    sent_as text not null,
    cells text not null,
    undone integer not null default 0,
    at text not null,
    unique (case_id, sent_as)
) strict;

-- Records as they stood when a case took them in; the name holds a digest of the content, and cases name it.
create table linked_records (
    name text primary key,
    content text not null,
    at text not null
) strict;
