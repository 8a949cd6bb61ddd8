-- Engine books as they were, each by the SHA-256 of its text.
CREATE TABLE book (
    hash TEXT PRIMARY KEY,
    text TEXT NOT NULL
) STRICT, WITHOUT ROWID;

-- entries and head say how long the journal is and where its chain ends, so that a lost tail is seen.
CREATE TABLE build (
    id      TEXT PRIMARY KEY,
    name    TEXT NOT NULL,
    entries INTEGER NOT NULL,
    head    TEXT NOT NULL
) STRICT, WITHOUT ROWID;

-- The journals: the only truth. line is the entry's exact JSON, hash the SHA-256 of previous and line.
CREATE TABLE entry (
    build    TEXT NOT NULL REFERENCES build (id),
    number   INTEGER NOT NULL CHECK (number >= 1),
    key      TEXT NOT NULL,
    line     TEXT NOT NULL,
    previous TEXT NOT NULL,
    hash     TEXT NOT NULL,
    PRIMARY KEY (build, number),
    UNIQUE (build, key)
) STRICT, WITHOUT ROWID;

CREATE TRIGGER entry_is_never_changed BEFORE UPDATE ON entry
BEGIN SELECT RAISE(ABORT, 'an entry is never changed'); END;

CREATE TRIGGER entry_is_never_deleted BEFORE DELETE ON entry
BEGIN SELECT RAISE(ABORT, 'an entry is never deleted'); END;
