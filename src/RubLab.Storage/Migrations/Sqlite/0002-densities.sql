CREATE TABLE densities (
    kitchen_id    TEXT    NOT NULL REFERENCES kitchens (id),
    ingredient_id TEXT    NOT NULL,
    form_id       TEXT    NOT NULL,
    revision      INTEGER NOT NULL CHECK (revision >= 1),
    document      TEXT    NOT NULL,
    updated_at    TEXT    NOT NULL,
    -- As with formulas: a row deleted and put again goes on counting.
    deleted_at    TEXT,
    PRIMARY KEY (kitchen_id, ingredient_id, form_id)
) STRICT;

CREATE TABLE density_revisions (
    kitchen_id    TEXT    NOT NULL,
    ingredient_id TEXT    NOT NULL,
    form_id       TEXT    NOT NULL,
    revision      INTEGER NOT NULL CHECK (revision >= 1),
    document      TEXT    NOT NULL,
    created_at    TEXT    NOT NULL,
    PRIMARY KEY (kitchen_id, ingredient_id, form_id, revision),
    FOREIGN KEY (kitchen_id, ingredient_id, form_id) REFERENCES densities (kitchen_id, ingredient_id, form_id)
) STRICT;

CREATE TRIGGER density_revisions_are_not_changed BEFORE UPDATE ON density_revisions
BEGIN
    SELECT RAISE(ABORT, 'A density revision is never changed.');
END;

CREATE TRIGGER density_revisions_are_not_deleted BEFORE DELETE ON density_revisions
BEGIN
    SELECT RAISE(ABORT, 'A density revision is never deleted.');
END;
