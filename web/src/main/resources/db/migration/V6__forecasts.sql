-- What was forecast of a case, kept to be held against what comes. One made again on the same day of a case of the same
-- day takes the place of the first.
create table kept_forecast (
    id integer primary key,
    case_id text not null references case_file (id) on delete cascade,
    made text not null,
    as_of text not null,
    seed integer not null,
    -- One forecast in the format footing-forecast/1.
    content text not null,
    unique (case_id, made, as_of)
) strict;
