-- Forms from here on may be of the second version of an instrument's, and kits, which older programs do not know.
-- What tells an edit from every other, chosen by the program that made it: an edit sent again because the link was lost
-- before the answer came is recognised and not stored twice.
alter table edit add column token text;

create unique index edit_by_token on edit (token);
