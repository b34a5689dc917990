CREATE TABLE densities (
    kitchen_id    text   COLLATE "C" NOT NULL REFERENCES kitchens (id),
    ingredient_id text   COLLATE "C" NOT NULL,
    form_id       text   COLLATE "C" NOT NULL,
    revision      bigint NOT NULL CHECK (revision >= 1),
    document      text   NOT NULL,
    updated_at    text   NOT NULL,
    -- As with formulas: a row deleted and put again goes on counting.
    deleted_at    text,
    PRIMARY KEY (kitchen_id, ingredient_id, form_id)
);

CREATE TABLE density_revisions (
    kitchen_id    text   COLLATE "C" NOT NULL,
    ingredient_id text   COLLATE "C" NOT NULL,
    form_id       text   COLLATE "C" NOT NULL,
    revision      bigint NOT NULL CHECK (revision >= 1),
    document      text   NOT NULL,
    created_at    text   NOT NULL,
    PRIMARY KEY (kitchen_id, ingredient_id, form_id, revision),
    FOREIGN KEY (kitchen_id, ingredient_id, form_id) REFERENCES densities (kitchen_id, ingredient_id, form_id)
);

CREATE TRIGGER density_revisions_are_not_changed BEFORE UPDATE ON density_revisions
FOR EACH STATEMENT EXECUTE FUNCTION refuse_rewriting('A density revision is never changed.');

CREATE TRIGGER density_revisions_are_not_deleted BEFORE DELETE OR TRUNCATE ON density_revisions
FOR EACH STATEMENT EXECUTE FUNCTION refuse_rewriting('A density revision is never deleted.');
