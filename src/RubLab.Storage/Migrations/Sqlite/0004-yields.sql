ALTER TABLE kitchens ADD COLUMN yield_revision INTEGER NOT NULL DEFAULT 0;

CREATE TABLE yields (
    kitchen_id    TEXT    NOT NULL REFERENCES kitchens (id),
    cut_id        TEXT    NOT NULL,
    revision      INTEGER NOT NULL CHECK (revision >= 1),
    document      TEXT    NOT NULL,
    updated_at    TEXT    NOT NULL,
    -- As with formulas: a row deleted and put again goes on counting.
    deleted_at    TEXT,
    PRIMARY KEY (kitchen_id, cut_id)
) STRICT;

CREATE TABLE yield_revisions (
    kitchen_id    TEXT    NOT NULL,
    cut_id        TEXT    NOT NULL,
    revision      INTEGER NOT NULL CHECK (revision >= 1),
    document      TEXT    NOT NULL,
    created_at    TEXT    NOT NULL,
    PRIMARY KEY (kitchen_id, cut_id, revision),
    FOREIGN KEY (kitchen_id, cut_id) REFERENCES yields (kitchen_id, cut_id)
) STRICT;

CREATE TRIGGER yield_revisions_are_not_changed BEFORE UPDATE ON yield_revisions
BEGIN
    SELECT RAISE(ABORT, 'A yield revision is never changed.');
END;

CREATE TRIGGER yield_revisions_are_not_deleted BEFORE DELETE ON yield_revisions
BEGIN
    SELECT RAISE(ABORT, 'A yield revision is never deleted.');
END;
