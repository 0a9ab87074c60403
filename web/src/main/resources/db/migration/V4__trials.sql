-- Field trials of a case. Runs and photos are never changed or thrown away: what is no longer to count is marked.
create table trial (
    id integer primary key,
    case_id text not null references case_file (id) on delete cascade,
    -- Made by the sender, so that what is sent twice is kept once.
    sent_as text not null,
    name text not null,
    -- What is compared, how and in which order, as JSON; null where a file came.
    setup text,
    -- A trial file as it came, and its name; null where the trial was begun here.
    content text,
    file_name text,
    archived integer not null default 0,
    at text not null,
    unique (case_id, sent_as)
) strict;

-- A run as it was written down, by the keys of a trial file, as JSON.
create table trial_run (
    id integer primary key,
    trial_id integer not null references trial (id) on delete cascade,
    sent_as text not null,
    -- Which run of the plan it is.
    place text not null,
    -- When it was made, by the clock of whoever wrote it down; runs count in this order.
    made text not null,
    cells text not null,
    undone integer not null default 0,
    at text not null,
    unique (trial_id, sent_as)
) strict;
