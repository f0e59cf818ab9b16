-- An edit: one name for what was changed together, when and by whom.
create table edit (
    edit bigint not null primary key,
    name text not null,
    made_at text not null,
    made_by text not null
);

-- What a thing became by an edit: its JSON form, or none when it was taken out. Rows are only ever added.
-- The columns after the form repeat what is searched on.
create table revision (
    revision bigint not null primary key,
    edit bigint not null references edit (edit),
    thing text not null,
    kind text not null,
    form text,
    name text not null,
    search_text text not null,
    size integer,
    taper double precision,
    family text,
    alloy text,
    motion text
);

create index revision_of_thing on revision (thing, revision);

-- Where each thing stands now: the one table whose rows change.
create table head (
    thing text not null primary key,
    revision bigint not null references revision (revision)
);

create view present_thing as
select
    revision.revision,
    revision.thing,
    revision.kind,
    revision.form,
    revision.name,
    revision.search_text,
    revision.size,
    revision.taper,
    revision.family,
    revision.alloy,
    revision.motion,
    edit.name as edit_name,
    edit.made_at,
    edit.made_by
from head
join revision on revision.revision = head.revision
join edit on edit.edit = revision.edit
where revision.form is not null;
