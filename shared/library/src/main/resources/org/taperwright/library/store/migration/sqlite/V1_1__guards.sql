-- The past cannot be changed, and a form is JSON.
create trigger revision_stays before update on revision
begin
    select raise(abort, 'a revision is never changed');
end;

create trigger revision_is_kept before delete on revision
begin
    select raise(abort, 'a revision is never deleted');
end;

create trigger edit_stays before update on edit
begin
    select raise(abort, 'an edit is never changed');
end;

create trigger edit_is_kept before delete on edit
begin
    select raise(abort, 'an edit is never deleted');
end;

create trigger form_is_json before insert on revision
when new.form is not null and not json_valid(new.form)
begin
    select raise(abort, 'a form must be JSON');
end;
