-- Photos of a trial's runs as they came, with what was read off them. None is ever changed or thrown away.
create table trial_photo (
    id integer primary key,
    trial_id integer not null references trial (id) on delete cascade,
    -- Made by the sender, so that what is sent twice is kept once.
    sent_as text not null,
    place text not null,
    -- print, before or after.
    part text not null,
    made text not null,
    content blob not null,
    -- Pointed at by hand, as places in the picture; empty to have them found.
    corners text not null default '',
    border text not null default '',
    -- What was read, as JSON, and the picture with it drawn over; null until then.
    seen text,
    overlay blob,
    undone integer not null default 0,
    at text not null,
    unique (trial_id, sent_as)
) strict;
