/** Every save of the content, kept beside the order book, so that any of them can be taken back. */
import { existsSync, mkdirSync, renameSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { deflateSync, inflateSync } from 'node:zlib';
import { textDigest } from '#catalogue/write/saveFile.ts';
import { isLang } from '#words/lang.ts';
import { filesOf, keepPrivate } from '../book/open.ts';
import type { EntryKey, EntryKind, SaveRecord } from './entry.ts';

/** 'Clhi' as SQLite's application id. */
const APPLICATION_ID = 0x436c6869;
const BUSY_MS = 2_000;

/** How a save stands: written down before the file is, so that a crash between them loses neither. */
const SCHEMA = `
  CREATE TABLE texts (digest TEXT PRIMARY KEY, deflated BLOB NOT NULL) STRICT;
  CREATE TABLE saves (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    at TEXT NOT NULL,
    file TEXT NOT NULL,
    kind TEXT NOT NULL,
    entry TEXT NOT NULL,
    lang TEXT,
    action TEXT NOT NULL,
    undoes INTEGER REFERENCES saves (id),
    before_digest TEXT REFERENCES texts (digest),
    after_digest TEXT REFERENCES texts (digest),
    written INTEGER NOT NULL DEFAULT 0
  ) STRICT;
  CREATE INDEX saves_of_file ON saves (file, id);
`;

/** What is written down before a file is. */
export type Begun = Omit<SaveRecord, 'id' | 'undoneBy'>;

export type History = {
  /** Writes a save down that isn't on the disk yet; its number. */
  readonly begin: (save: Begun) => number;
  /** Runs `work` while no other bench writes; what it returns true for is done, else forgotten. */
  readonly finish: <T extends { readonly ok: boolean }>(id: number, work: () => T) => T;
  /** Saves, newest first; of one file, or all. */
  readonly list: (options?: {
    readonly file?: string | undefined;
    readonly before?: number | undefined;
    readonly most?: number | undefined;
  }) => SaveRecord[];
  readonly one: (id: number) => SaveRecord | null;
  /** Settles saves that a crash has left open, by what the file says now (its digest, null where there is none). */
  readonly settle: (digestNow: (file: string) => string | null) => void;
  readonly close: () => void;
};

/** Where the history of the content lies that goes with an order book. */
export const historyFile = (bookFile: string): string => join(dirname(bookFile), 'content-history.sqlite');

function opened(file: string): DatabaseSync {
  mkdirSync(dirname(file), { recursive: true, mode: 0o700 });
  keepPrivate(file);
  const db = new DatabaseSync(file, { timeout: BUSY_MS });
  try {
    db.exec('PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; PRAGMA foreign_keys = ON');
    const id = Number(db.prepare('PRAGMA application_id').get()?.application_id);
    const tables = Number(db.prepare('SELECT count(*) AS n FROM sqlite_schema').get()?.n);
    if (tables > 0 && id !== APPLICATION_ID) throw new Error('not a history');
    if (tables === 0) db.exec(`BEGIN IMMEDIATE; ${SCHEMA} PRAGMA application_id = ${APPLICATION_ID}; COMMIT`);
    db.prepare('SELECT count(*) FROM saves').get();
    return db;
  } catch (error) {
    db.close();
    throw error;
  }
}

/** Damaged beyond reading, by SQLite's result codes, or another file altogether. */
function isDamaged(error: unknown): boolean {
  const code = error instanceof Error && 'errcode' in error ? Number(error.errcode) & 0xff : 0;
  return code === 11 || code === 26 || (error instanceof Error && error.message === 'not a history');
}

/** Opens the history; one that can't be read any more is set aside and a new one begun. Throws where neither goes. */
function openOrBegin(file: string, nowMs: number): DatabaseSync {
  try {
    return opened(file);
  } catch (error) {
    if (!isDamaged(error)) throw error;
    for (const one of filesOf(file)) if (existsSync(one)) renameSync(one, `${one}.damaged-${nowMs}`);
    return opened(file);
  }
}

type Row = Readonly<Record<string, unknown>>;

const KINDS: readonly string[] = ['piece', 'component', 'wire', 'guide', 'shop'] satisfies EntryKind[];

function keyOf(row: Row): EntryKey {
  const kind = KINDS.includes(String(row.kind)) ? (String(row.kind) as EntryKind) : 'shop';
  const id = String(row.entry);
  return typeof row.lang === 'string' && isLang(row.lang) ? { kind, id, lang: row.lang } : { kind, id };
}

const textIn = (value: unknown): string | null =>
  value instanceof Uint8Array ? inflateSync(value).toString('utf8') : null;

const numberIn = (value: unknown): number | null => (typeof value === 'number' ? value : null);

const recordOf = (row: Row): SaveRecord => ({
  id: Number(row.id),
  at: String(row.at),
  file: String(row.file),
  key: keyOf(row),
  action: String(row.action) as SaveRecord['action'],
  undoes: numberIn(row.undoes),
  undoneBy: numberIn(row.undone_by),
  before: textIn(row.before),
  after: textIn(row.after),
});

const SELECT = `
  SELECT s.*, b.deflated AS before, a.deflated AS after,
    (SELECT max(u.id) FROM saves u WHERE u.undoes = s.id AND u.written = 1) AS undone_by
  FROM saves s
  LEFT JOIN texts b ON b.digest = s.before_digest
  LEFT JOIN texts a ON a.digest = s.after_digest
`;

function inOneWrite<T>(db: DatabaseSync, work: () => T): T {
  db.exec('BEGIN IMMEDIATE');
  try {
    const result = work();
    db.exec('COMMIT');
    return result;
  } catch (error) {
    if (db.isTransaction) db.exec('ROLLBACK');
    throw error;
  }
}

function keepText(db: DatabaseSync, text: string | null): string | null {
  if (text === null) return null;
  const digest = textDigest(text);
  db.prepare('INSERT OR IGNORE INTO texts (digest, deflated) VALUES (?, ?)').run(digest, deflateSync(text));
  return digest;
}

const insert = (db: DatabaseSync, save: Begun): number =>
  inOneWrite(db, () =>
    Number(
      db
        .prepare(
          `INSERT INTO saves (at, file, kind, entry, lang, action, undoes, before_digest, after_digest)
           VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)`,
        )
        .run(
          save.at,
          save.file,
          save.key.kind,
          save.key.id,
          save.key.lang ?? null,
          save.action,
          save.undoes,
          keepText(db, save.before),
          keepText(db, save.after),
        ).lastInsertRowid,
    ),
  );

/**
 * Opens the history, or begins one.
 * @throws where the folder or the file can't be written
 */
export function openHistory(file: string, nowMs: number): History {
  const db = openOrBegin(file, nowMs);
  return {
    begin: (save) => insert(db, save),
    finish: (id, work) => {
      let done: ReturnType<typeof work> | null = null;
      try {
        return inOneWrite(db, () => {
          done = work();
          const sql = done.ok
            ? 'UPDATE saves SET written = 1 WHERE id = ?'
            : 'DELETE FROM saves WHERE id = ?';
          db.prepare(sql).run(id);
          return done;
        });
      } catch (error) {
        // The file is as it shall be; the history settles what it couldn't note when it is opened next.
        if (done !== null) return done;
        throw error;
      }
    },
    list: ({ file: of, before, most = 1000 } = {}) =>
      db
        .prepare(
          `${SELECT} WHERE s.written = 1 AND (?1 IS NULL OR s.file = ?1) AND (?2 IS NULL OR s.id < ?2) ORDER BY s.id DESC LIMIT ?3`,
        )
        .all(of ?? null, before ?? null, most)
        .map(recordOf),
    one: (id) => {
      const row = db.prepare(`${SELECT} WHERE s.written = 1 AND s.id = ?`).get(id);
      return row === undefined ? null : recordOf(row);
    },
    settle: (digestNow) => {
      inOneWrite(db, () => {
        for (const row of db.prepare('SELECT id, file, after_digest FROM saves WHERE written = 0').all()) {
          const arrived = digestNow(String(row.file)) === (row.after_digest ?? null);
          db.prepare(
            arrived ? 'UPDATE saves SET written = 1 WHERE id = ?' : 'DELETE FROM saves WHERE id = ?',
          ).run(Number(row.id));
        }
      });
    },
    close: () => db.close(),
  };
}
