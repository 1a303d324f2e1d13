-- Schema 1. Only what both SQLite and PostgreSQL understand. Each file ends by writing down its own number.

CREATE TABLE schema_number (
    number INTEGER NOT NULL
);

-- place: 1 for the stream that began first, then without gaps
CREATE TABLE stream (
    place BIGINT NOT NULL PRIMARY KEY,
    kind VARCHAR(20) NOT NULL,
    id VARCHAR(80) NOT NULL,
    UNIQUE (kind, id)
);

CREATE INDEX stream_by_kind ON stream (kind, place);

-- at: microseconds since 1970-01-01T00:00:00 UTC; hash: see docs/formats/journal.md
CREATE TABLE entry (
    stream BIGINT NOT NULL REFERENCES stream (place),
    number BIGINT NOT NULL,
    at BIGINT NOT NULL,
    form INTEGER NOT NULL,
    text TEXT NOT NULL,
    hash CHAR(64) NOT NULL,
    PRIMARY KEY (stream, number)
);

INSERT INTO schema_number (number) VALUES (1);
