-- Runs before every migration, so it says IF NOT EXISTS; the numbered migrations run once each.
CREATE TABLE IF NOT EXISTS schema_migrations (
    number     bigint NOT NULL PRIMARY KEY,
    name       text   NOT NULL,
    applied_at text   NOT NULL
);
