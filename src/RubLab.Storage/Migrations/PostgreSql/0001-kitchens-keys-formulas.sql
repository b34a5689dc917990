-- Tells our databases from those of other programs (PostgresInspection looks for it); "Rub" in ASCII and a format digit.
CREATE TABLE rublab (
    application_id bigint NOT NULL PRIMARY KEY
);
INSERT INTO rublab (application_id) VALUES (1383424561);

-- Text that is ordered or compared is COLLATE "C": by code point, as everywhere else, whatever the database's locale.
CREATE TABLE kitchens (
    id               text   COLLATE "C" NOT NULL PRIMARY KEY,
    name             text   NOT NULL,
    density_revision bigint NOT NULL DEFAULT 0,
    -- A counter row, not a sequence: numbers follow commit order and a rollback leaves no gap.
    last_change      bigint NOT NULL DEFAULT 0,
    examples_edition text,
    created_at       text   NOT NULL
);

CREATE TABLE keys (
    kitchen_id text COLLATE "C" NOT NULL REFERENCES kitchens (id),
    id         text COLLATE "C" NOT NULL,
    name       text NOT NULL,
    hash       text COLLATE "C" NOT NULL UNIQUE,
    scopes     text NOT NULL,
    created_at text COLLATE "C" NOT NULL,
    revoked_at text,
    PRIMARY KEY (kitchen_id, id)
);

CREATE TABLE formulas (
    kitchen_id text   COLLATE "C" NOT NULL REFERENCES kitchens (id),
    id         text   COLLATE "C" NOT NULL,
    revision   bigint NOT NULL CHECK (revision >= 1),
    name       text   NOT NULL,
    -- The name folded by our own code: engines disagree on case beyond ASCII.
    name_key   text   COLLATE "C" NOT NULL,
    kind       text   COLLATE "C" NOT NULL,
    document   text   NOT NULL,
    created_at text   NOT NULL,
    updated_at text   NOT NULL,
    deleted_at text,
    PRIMARY KEY (kitchen_id, id)
);

CREATE INDEX formulas_by_name ON formulas (kitchen_id, name_key, id) WHERE deleted_at IS NULL;
CREATE INDEX formulas_by_kind ON formulas (kitchen_id, kind, name_key, id) WHERE deleted_at IS NULL;

CREATE TABLE formula_revisions (
    kitchen_id text   COLLATE "C" NOT NULL,
    id         text   COLLATE "C" NOT NULL,
    revision   bigint NOT NULL CHECK (revision >= 1),
    name       text   NOT NULL,
    kind       text   NOT NULL,
    document   text   NOT NULL,
    created_at text   NOT NULL,
    PRIMARY KEY (kitchen_id, id, revision),
    FOREIGN KEY (kitchen_id, id) REFERENCES formulas (kitchen_id, id)
);

CREATE FUNCTION refuse_rewriting() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    RAISE EXCEPTION '%', TG_ARGV[0];
END
$$;

CREATE TRIGGER formula_revisions_are_not_changed BEFORE UPDATE ON formula_revisions
FOR EACH STATEMENT EXECUTE FUNCTION refuse_rewriting('A formula revision is never changed.');

CREATE TRIGGER formula_revisions_are_not_deleted BEFORE DELETE OR TRUNCATE ON formula_revisions
FOR EACH STATEMENT EXECUTE FUNCTION refuse_rewriting('A formula revision is never deleted.');

CREATE TABLE changes (
    kitchen_id text   COLLATE "C" NOT NULL REFERENCES kitchens (id),
    number     bigint NOT NULL CHECK (number >= 1),
    noun       text   NOT NULL,
    item_id    text   NOT NULL,
    revision   bigint NOT NULL,
    action     text   NOT NULL CHECK (action IN ('put', 'deleted')),
    at         text   NOT NULL,
    PRIMARY KEY (kitchen_id, number)
);

CREATE TABLE replays (
    kitchen_id      text   COLLATE "C" NOT NULL REFERENCES kitchens (id),
    idempotency_key text   COLLATE "C" NOT NULL,
    request_hash    text   NOT NULL,
    status          bigint NOT NULL,
    headers         text   NOT NULL,
    body            text   NOT NULL,
    created_at      text   COLLATE "C" NOT NULL,
    PRIMARY KEY (kitchen_id, idempotency_key)
);

CREATE INDEX replays_by_age ON replays (created_at);

-- The installation's own, not a kitchen's.
CREATE TABLE secrets (
    name       text COLLATE "C" NOT NULL PRIMARY KEY,
    value      text NOT NULL,
    created_at text NOT NULL
);
