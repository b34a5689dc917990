-- One row: how often a code was tried in vain while one was open. Whoever gives out or tries a code writes it first, so they take turns.
CREATE TABLE pairing_tries (
    only_row INTEGER NOT NULL PRIMARY KEY CHECK (only_row = 1),
    wrong    INTEGER NOT NULL
) STRICT;
INSERT INTO pairing_tries (only_row, wrong) VALUES (1, 0);

-- Codes that may still be used, or have expired since: a code used or void has no row.
CREATE TABLE pairing_codes (
    kitchen_id  TEXT NOT NULL REFERENCES kitchens (id),
    id          TEXT NOT NULL,
    hash        TEXT NOT NULL,
    scopes      TEXT NOT NULL,
    device_name TEXT,
    created_at  TEXT NOT NULL,
    expires_at  TEXT NOT NULL,
    PRIMARY KEY (kitchen_id, id)
) STRICT;

-- A device that was unpaired has no row.
CREATE TABLE device_sessions (
    kitchen_id   TEXT NOT NULL REFERENCES kitchens (id),
    id           TEXT NOT NULL,
    name         TEXT NOT NULL,
    hash         TEXT NOT NULL UNIQUE,
    scopes       TEXT NOT NULL,
    created_at   TEXT NOT NULL,
    last_used_at TEXT NOT NULL,
    expires_at   TEXT NOT NULL,
    PRIMARY KEY (kitchen_id, id)
) STRICT;

CREATE INDEX device_sessions_by_age ON device_sessions (expires_at);
