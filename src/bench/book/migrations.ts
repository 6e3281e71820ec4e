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
  `
  -- What was agreed on, from then on whatever the piece's price becomes; NULL before that, and in orders
  -- that were agreed before the book kept money.
  ALTER TABLE orders ADD COLUMN agreed_minor INTEGER CHECK (agreed_minor >= 0);
  ALTER TABLE orders ADD COLUMN agreed_currency TEXT;

  -- Money that came or went back, as the maker entered it. A line is never changed: one entered by mistake is struck out.
  CREATE TABLE payment (
    id INTEGER PRIMARY KEY,
    number TEXT NOT NULL REFERENCES orders (number),
    kind TEXT NOT NULL CHECK (kind IN ('paid', 'refunded')),
    minor INTEGER NOT NULL CHECK (minor > 0),
    currency TEXT NOT NULL,
    day TEXT NOT NULL,
    way TEXT NOT NULL CHECK (way IN ('transfer', 'card', 'cash', 'other')),
    at TEXT NOT NULL,
    struck_at TEXT
  ) STRICT;
  CREATE INDEX payment_by_order ON payment (number, id);
  CREATE INDEX payment_by_day ON payment (day, id);

  -- Papers with a number of their own. What they say is kept as it was said.
  CREATE TABLE invoice (
    invoice TEXT PRIMARY KEY,
    number TEXT NOT NULL REFERENCES orders (number),
    kind TEXT NOT NULL CHECK (kind IN ('invoice', 'credit-note')),
    -- The invoice that a credit note takes back: once, and wholly.
    corrects TEXT UNIQUE REFERENCES invoice (invoice),
    issued_at TEXT NOT NULL,
    content TEXT NOT NULL CHECK (json_valid(content)),
    erased_at TEXT,
    CHECK ((kind = 'credit-note') = (corrects IS NOT NULL))
  ) STRICT;
  CREATE INDEX invoice_by_order ON invoice (number, issued_at);
  CREATE INDEX invoice_by_day ON invoice (issued_at);
  -- The last count given out behind each prefix. It outlives a backup that is put back, so that no number comes twice.
  CREATE TABLE invoice_count (prefix TEXT PRIMARY KEY, last INTEGER NOT NULL CHECK (last > 0)) STRICT;

  CREATE TABLE parcel (
    id INTEGER PRIMARY KEY,
    number TEXT NOT NULL REFERENCES orders (number),
    carrier TEXT NOT NULL,
    -- Empty where the carrier gives none.
    tracking TEXT NOT NULL,
    sent_on TEXT NOT NULL,
    at TEXT NOT NULL
  ) STRICT;
  CREATE INDEX parcel_by_order ON parcel (number, id);

  -- More kinds of events; a CHECK can't be changed in place.
  CREATE TABLE event_with_money (
    id INTEGER PRIMARY KEY,
    number TEXT NOT NULL REFERENCES orders (number),
    at TEXT NOT NULL,
    kind TEXT NOT NULL CHECK (kind IN (
      'received', 'state', 'reason', 'due', 'note', 'message', 'erased', 'payment', 'struck', 'invoice', 'parcel'
    )),
    text TEXT NOT NULL
  ) STRICT;
  INSERT INTO event_with_money (id, number, at, kind, text) SELECT id, number, at, kind, text FROM event;
  DROP TABLE event;
  ALTER TABLE event_with_money RENAME TO event;
  CREATE INDEX event_by_order ON event (number, id);
  `,
  `
  -- Where it goes by what the buyer wrote later, beside the document, which stays as it came.
  ALTER TABLE orders ADD COLUMN delivery TEXT CHECK (delivery IS NULL OR json_valid(delivery));

  CREATE TABLE event_with_address (
    id INTEGER PRIMARY KEY,
    number TEXT NOT NULL REFERENCES orders (number),
    at TEXT NOT NULL,
    kind TEXT NOT NULL CHECK (kind IN (
      'received', 'state', 'reason', 'due', 'note', 'message', 'erased', 'payment', 'struck', 'invoice', 'parcel',
      'address'
    )),
    text TEXT NOT NULL
  ) STRICT;
  INSERT INTO event_with_address (id, number, at, kind, text) SELECT id, number, at, kind, text FROM event;
  DROP TABLE event;
  ALTER TABLE event_with_address RENAME TO event;
  CREATE INDEX event_by_order ON event (number, id);
  `,
  `
  -- What came into and went out of the trays. A line is never changed nor deleted: one entered by mistake is
  -- struck by another line that takes back what it did, and what there is is always the sum of all.
  CREATE TABLE movement (
    id INTEGER PRIMARY KEY,
    -- A component's short name, or "wire/" and a wire's.
    thing TEXT NOT NULL,
    kind TEXT NOT NULL CHECK (kind IN ('received', 'counted', 'strung', 'broken', 'sold', 'put-aside', 'struck')),
    -- Pieces, or millimetres of wire; below 0 what went out.
    amount INTEGER NOT NULL,
    -- Of wire: the length of the offcut it is about, millimetres; NULL for the reel, and for all else.
    offcut INTEGER CHECK (offcut > 0),
    -- What a count found; the amount is by how much it differed.
    counted INTEGER CHECK (counted >= 0),
    -- As it was entered, "3 strands".
    entered TEXT NOT NULL,
    -- The order that took it.
    number TEXT REFERENCES orders (number),
    strikes INTEGER UNIQUE REFERENCES movement (id),
    at TEXT NOT NULL,
    who TEXT NOT NULL CHECK (who IN ('machine', 'visit')),
    note TEXT NOT NULL,
    CHECK ((kind = 'counted') = (counted IS NOT NULL)),
    CHECK ((kind = 'struck') = (strikes IS NOT NULL))
  ) STRICT;
  CREATE INDEX movement_by_thing ON movement (thing, offcut, amount);
  CREATE INDEX movement_by_order ON movement (number) WHERE number IS NOT NULL;
  CREATE INDEX movement_by_day ON movement (at);

  -- What the file of a thing said of its stock when book and file were last in step; NULL where it said nothing.
  CREATE TABLE written_stock (thing TEXT PRIMARY KEY, said INTEGER, at TEXT NOT NULL) STRICT;
  `,
  `
  -- How far she is with stringing an order, a batch or a piece, so that another device takes it up where she left off.
  CREATE TABLE place (
    subject TEXT PRIMARY KEY,
    -- Of the steps that she went by: others than today's mean that the order or the piece was changed since.
    digest TEXT NOT NULL,
    place INTEGER NOT NULL CHECK (place >= 0),
    version INTEGER NOT NULL CHECK (version > 0),
    -- Of the save that brought it there, by which the same one sent twice is known.
    save TEXT NOT NULL,
    -- Name of a paired device; empty at the bench itself.
    who TEXT NOT NULL,
    at TEXT NOT NULL
  ) STRICT;

  -- Time at the board by her own clock, where she let it run; nobody has to. Each with the save that brought it,
  -- so that one sent again after its answer was lost counts once, whatever came between.
  CREATE TABLE board_time (
    number TEXT NOT NULL REFERENCES orders (number),
    save TEXT NOT NULL,
    day TEXT NOT NULL,
    seconds INTEGER NOT NULL CHECK (seconds > 0),
    PRIMARY KEY (number, save)
  ) STRICT;
  `,
  `
  -- Tablets of the home network: a code that pairs one, and those that are paired, each by the hash of its token.
  -- They stay with the machine, as passphrase and visits do.
  CREATE TABLE pairing (
    token_hash TEXT PRIMARY KEY,
    begun_at INTEGER NOT NULL,
    ends_at INTEGER NOT NULL
  ) STRICT;
  CREATE TABLE device (
    id INTEGER PRIMARY KEY,
    token_hash TEXT NOT NULL UNIQUE,
    name TEXT NOT NULL,
    paired_at TEXT NOT NULL,
    seen_at TEXT NOT NULL
  ) STRICT;
  `,
  `
  -- Digests of what the book keeps of an order beside its document, and of a thing's lines of stock.
  CREATE TABLE kept_digest (
    kind TEXT NOT NULL CHECK (kind IN ('order', 'stock')),
    -- The order's number, or the thing.
    of TEXT NOT NULL,
    digest TEXT NOT NULL,
    PRIMARY KEY (kind, of)
  ) STRICT, WITHOUT ROWID;

  -- The piece as it stood when the order was agreed on; NULL before that, and in orders that were agreed before the
  -- book kept it.
  ALTER TABLE orders ADD COLUMN agreed_snapshot INTEGER REFERENCES snapshot (id);

  CREATE TABLE event_with_looks (
    id INTEGER PRIMARY KEY,
    number TEXT NOT NULL REFERENCES orders (number),
    at TEXT NOT NULL,
    kind TEXT NOT NULL CHECK (kind IN (
      'received', 'state', 'reason', 'due', 'note', 'message', 'erased', 'payment', 'struck', 'invoice', 'parcel',
      'address', 'looked-over'
    )),
    text TEXT NOT NULL
  ) STRICT;
  INSERT INTO event_with_looks (id, number, at, kind, text) SELECT id, number, at, kind, text FROM event;
  DROP TABLE event;
  ALTER TABLE event_with_looks RENAME TO event;
  CREATE INDEX event_by_order ON event (number, id);
  `,
];

/**
 * The version since which digests are what they are now. In a book of before it they are made of what stands there
 * when it is brought to today's: what was wrong by then they take for right.
 */
export const DIGESTS_SINCE = 8;

/** Marks the file as an order book (SQLite's application id): "Clsp". */
export const APPLICATION_ID = 0x436c7370;
