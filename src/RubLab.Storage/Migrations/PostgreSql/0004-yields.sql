ALTER TABLE kitchens ADD COLUMN yield_revision bigint NOT NULL DEFAULT 0;

CREATE TABLE yields (
    kitchen_id    text   COLLATE "C" NOT NULL REFERENCES kitchens (id),
    cut_id        text   COLLATE "C" NOT NULL,
    revision      bigint NOT NULL CHECK (revision >= 1),
    document      text   NOT NULL,
    updated_at    text   NOT NULL,
    -- As with formulas: a row deleted and put again goes on counting.
    deleted_at    text,
    PRIMARY KEY (kitchen_id, cut_id)
);

CREATE TABLE yield_revisions (
    kitchen_id    text   COLLATE "C" NOT NULL,
    cut_id        text   COLLATE "C" NOT NULL,
    revision      bigint NOT NULL CHECK (revision >= 1),
    document      text   NOT NULL,
    created_at    text   NOT NULL,
    PRIMARY KEY (kitchen_id, cut_id, revision),
    FOREIGN KEY (kitchen_id, cut_id) REFERENCES yields (kitchen_id, cut_id)
);

CREATE TRIGGER yield_revisions_are_not_changed BEFORE UPDATE ON yield_revisions
FOR EACH STATEMENT EXECUTE FUNCTION refuse_rewriting('A yield revision is never changed.');

CREATE TRIGGER yield_revisions_are_not_deleted BEFORE DELETE OR TRUNCATE ON yield_revisions
FOR EACH STATEMENT EXECUTE FUNCTION refuse_rewriting('A yield revision is never deleted.');
