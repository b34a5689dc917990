-- Runs before every migration, so it says IF NOT EXISTS; the numbered migrations run once each.
CREATE TABLE IF NOT EXISTS schema_migrations (
    number     INTEGER NOT NULL PRIMARY KEY,
    name       TEXT    NOT NULL,
    applied_at TEXT    NOT NULL
) STRICT;
