-- The past cannot be changed, and a form is JSON.
create function refuse() returns trigger language plpgsql as $$
begin
    raise exception '%', tg_argv[0];
end
$$;

create trigger revision_stays before update on revision
for each statement execute function refuse('a revision is never changed');

create trigger revision_is_kept before delete or truncate on revision
for each statement execute function refuse('a revision is never deleted');

create trigger edit_stays before update on edit
for each statement execute function refuse('an edit is never changed');

create trigger edit_is_kept before delete or truncate on edit
for each statement execute function refuse('an edit is never deleted');

alter table revision add constraint form_is_json check (form is null or form::json is not null);
