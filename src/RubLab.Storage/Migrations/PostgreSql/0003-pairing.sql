-- One row: how often a code was tried in vain while one was open. Whoever gives out or tries a code writes it first, so they take turns.
CREATE TABLE pairing_tries (
    only_row bigint NOT NULL PRIMARY KEY CHECK (only_row = 1),
    wrong    bigint NOT NULL
);
INSERT INTO pairing_tries (only_row, wrong) VALUES (1, 0);

-- Codes that may still be used, or have expired since: a code used or void has no row.
CREATE TABLE pairing_codes (
    kitchen_id  text COLLATE "C" NOT NULL REFERENCES kitchens (id),
    id          text COLLATE "C" NOT NULL,
    hash        text COLLATE "C" NOT NULL,
    scopes      text NOT NULL,
    device_name text,
    created_at  text COLLATE "C" NOT NULL,
    expires_at  text COLLATE "C" NOT NULL,
    PRIMARY KEY (kitchen_id, id)
);

-- A device that was unpaired has no row.
CREATE TABLE device_sessions (
    kitchen_id   text COLLATE "C" NOT NULL REFERENCES kitchens (id),
    id           text COLLATE "C" NOT NULL,
    name         text NOT NULL,
    hash         text COLLATE "C" NOT NULL UNIQUE,
    scopes       text NOT NULL,
    created_at   text COLLATE "C" NOT NULL,
    last_used_at text COLLATE "C" NOT NULL,
    expires_at   text COLLATE "C" NOT NULL,
    PRIMARY KEY (kitchen_id, id)
);

CREATE INDEX device_sessions_by_age ON device_sessions (expires_at);
