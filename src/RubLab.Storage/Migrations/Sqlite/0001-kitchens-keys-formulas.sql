-- "Rub" in ASCII and a format digit: tells our files from those of other programs (SqliteInspection reads it).
PRAGMA application_id = 1383424561;

CREATE TABLE kitchens (
    id               TEXT    NOT NULL PRIMARY KEY,
    name             TEXT    NOT NULL,
    density_revision INTEGER NOT NULL DEFAULT 0,
    -- A counter row, not a sequence: numbers follow commit order and a rollback leaves no gap.
    last_change      INTEGER NOT NULL DEFAULT 0,
    examples_edition TEXT,
    created_at       TEXT    NOT NULL
) STRICT;

CREATE TABLE keys (
    kitchen_id TEXT NOT NULL REFERENCES kitchens (id),
    id         TEXT NOT NULL,
    name       TEXT NOT NULL,
    hash       TEXT NOT NULL UNIQUE,
    scopes     TEXT NOT NULL,
    created_at TEXT NOT NULL,
    revoked_at TEXT,
    PRIMARY KEY (kitchen_id, id)
) STRICT;

CREATE TABLE formulas (
    kitchen_id TEXT    NOT NULL REFERENCES kitchens (id),
    id         TEXT    NOT NULL,
    revision   INTEGER NOT NULL CHECK (revision >= 1),
    name       TEXT    NOT NULL,
    -- The name folded by our own code: engines disagree on case beyond ASCII.
    name_key   TEXT    NOT NULL,
    kind       TEXT    NOT NULL,
    document   TEXT    NOT NULL,
    created_at TEXT    NOT NULL,
    updated_at TEXT    NOT NULL,
    deleted_at TEXT,
    PRIMARY KEY (kitchen_id, id)
) STRICT;

CREATE INDEX formulas_by_name ON formulas (kitchen_id, name_key, id) WHERE deleted_at IS NULL;
CREATE INDEX formulas_by_kind ON formulas (kitchen_id, kind, name_key, id) WHERE deleted_at IS NULL;

CREATE TABLE formula_revisions (
    kitchen_id TEXT    NOT NULL,
    id         TEXT    NOT NULL,
    revision   INTEGER NOT NULL CHECK (revision >= 1),
    name       TEXT    NOT NULL,
    kind       TEXT    NOT NULL,
    document   TEXT    NOT NULL,
    created_at TEXT    NOT NULL,
    PRIMARY KEY (kitchen_id, id, revision),
    FOREIGN KEY (kitchen_id, id) REFERENCES formulas (kitchen_id, id)
) STRICT;

CREATE TRIGGER formula_revisions_are_not_changed BEFORE UPDATE ON formula_revisions
BEGIN
    SELECT RAISE(ABORT, 'A formula revision is never changed.');
END;

CREATE TRIGGER formula_revisions_are_not_deleted BEFORE DELETE ON formula_revisions
BEGIN
    SELECT RAISE(ABORT, 'A formula revision is never deleted.');
END;

CREATE TABLE changes (
    kitchen_id TEXT    NOT NULL REFERENCES kitchens (id),
    number     INTEGER NOT NULL CHECK (number >= 1),
    noun       TEXT    NOT NULL,
    item_id    TEXT    NOT NULL,
    revision   INTEGER NOT NULL,
    action     TEXT    NOT NULL CHECK (action IN ('put', 'deleted')),
    at         TEXT    NOT NULL,
    PRIMARY KEY (kitchen_id, number)
) STRICT, WITHOUT ROWID;

CREATE TABLE replays (
    kitchen_id      TEXT    NOT NULL REFERENCES kitchens (id),
    idempotency_key TEXT    NOT NULL,
    request_hash    TEXT    NOT NULL,
    status          INTEGER NOT NULL,
    headers         TEXT    NOT NULL,
    body            TEXT    NOT NULL,
    created_at      TEXT    NOT NULL,
    PRIMARY KEY (kitchen_id, idempotency_key)
) STRICT;

CREATE INDEX replays_by_age ON replays (created_at);

-- The installation's own, not a kitchen's.
CREATE TABLE secrets (
    name       TEXT NOT NULL PRIMARY KEY,
    value      TEXT NOT NULL,
    created_at TEXT NOT NULL
) STRICT;
