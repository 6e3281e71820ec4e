/**
 * The order book's tables, one step a version. A released step is never
 * changed; a later one is added after it. `PRAGMA user_version` counts them.
 */
export const MIGRATIONS: readonly string[] = [
  `
  -- A piece with the shop's rules as they stood when an order came in, so that
  -- it can be sized again by what held then as well as by what holds now.
  CREATE TABLE snapshot (
    id INTEGER PRIMARY KEY,
    piece TEXT NOT NULL,
    revision TEXT NOT NULL,
    digest TEXT NOT NULL UNIQUE,
    content TEXT NOT NULL CHECK (json_valid(content)),
    seen_at TEXT NOT NULL
  ) STRICT;
  CREATE INDEX snapshot_by_revision ON snapshot (piece, revision);

  CREATE TABLE orders (
    number TEXT PRIMARY KEY,
    document TEXT NOT NULL CHECK (json_valid(document)),
    -- SHA-256 of the document, which tells the same order from another with its number; gone once erased.
    digest TEXT,
    received_at TEXT NOT NULL,
    way TEXT NOT NULL,
    state TEXT NOT NULL CHECK (state IN ('new', 'asked', 'agreed', 'strung', 'sent', 'cancelled')),
    due_on TEXT,
    snapshot INTEGER REFERENCES snapshot (id),
    -- Goes up with every change: two windows can't overwrite each other unseen.
    version INTEGER NOT NULL DEFAULT 1,
    erased_at TEXT
  ) STRICT;
  CREATE INDEX orders_by_state ON orders (state, due_on, received_at);

  CREATE TABLE event (
    id INTEGER PRIMARY KEY,
    number TEXT NOT NULL REFERENCES orders (number),
    at TEXT NOT NULL,
    kind TEXT NOT NULL CHECK (kind IN ('received', 'state', 'due', 'note', 'message', 'erased')),
    text TEXT NOT NULL
  ) STRICT;
  CREATE INDEX event_by_order ON event (number, id);
  `,
  `
  -- Who may come in from elsewhere: the passphrase's scrypt hash, and visits by the hash of their token.
  CREATE TABLE setting (name TEXT PRIMARY KEY, value TEXT NOT NULL) STRICT;
  CREATE TABLE visit (token_hash TEXT PRIMARY KEY, ends_at INTEGER NOT NULL) STRICT;
  `,
];

/** Marks the file as an order book (SQLite's application id): "Clsp". */
export const APPLICATION_ID = 0x436c7370;
