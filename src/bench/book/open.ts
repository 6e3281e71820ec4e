/** Opens the order book: one SQLite file that loses nothing it has promised to keep. */
import { chmodSync, closeSync, existsSync, mkdirSync, openSync, statSync } from 'node:fs';
import { dirname } from 'node:path';
import { DatabaseSync, type StatementSync } from 'node:sqlite';
import { knowDigest, trustAll } from './keptSql.ts';
import { APPLICATION_ID, DIGESTS_SINCE, MIGRATIONS } from './migrations.ts';
import { BookError, isOfSchema, named } from './problem.ts';

export type Book = {
  readonly file: string;
  readonly db: DatabaseSync;
};

/** How long a write waits for another bench on the same book before it says `locked`. */
const BUSY_MS = 2_000;
/** Readable by the maker's account only: the book holds names and addresses. */
const FOLDER_MODE = 0o700;
const FILE_MODE = 0o600;

/** What SQLite keeps beside a book while it is open: log and index. */
export const BESIDE = ['-wal', '-shm'] as const;

/** All files of a book. */
export const filesOf = (file: string): readonly string[] => [file, ...BESIDE.map((end) => file + end)];

/**
 * Makes a file, or one that is there, private to the maker's account, whatever
 * the folder allows. SQLite gives its log and index the same mode.
 */
export function keepPrivate(file: string): void {
  try {
    if (!existsSync(file)) closeSync(openSync(file, 'ax', FILE_MODE));
    for (const one of filesOf(file)) if (existsSync(one)) chmodSync(one, FILE_MODE);
  } catch {
    // A folder or file that can't be changed is named where it is opened or written.
  }
}

/**
 * Opens or makes the book and brings it to the newest version.
 * @param options.busyMs how long to wait for a lock, milliseconds
 * @throws BookError where it can't be opened, is another file, or comes from a newer version
 */
export function openBook(file: string, options: { readonly busyMs?: number } = {}): Book {
  return named(() => {
    try {
      mkdirSync(dirname(file), { recursive: true, mode: FOLDER_MODE });
    } catch (error) {
      throw new BookError('unreachable', { cause: error });
    }
    keepPrivate(file);
    const db = new DatabaseSync(file, { timeout: options.busyMs ?? BUSY_MS });
    try {
      prepare(db);
    } catch (error) {
      db.close();
      throw isOfSchema(error) ? new BookError('broken', { cause: error }) : error;
    }
    return { file, db };
  });
}

/** True where other accounts of the machine can look into the folder of the book. */
export const isFolderOpen = ({ file }: Pick<Book, 'file'>): boolean =>
  (statSync(dirname(file)).mode & 0o077) !== 0;

const statements = new WeakMap<DatabaseSync, Map<string, StatementSync>>();

/** A statement of the book, compiled once; for those that every order runs. `sql`: one of few, values as parameters. */
export function prepared({ db }: Book, sql: string): StatementSync {
  const known = statements.get(db) ?? new Map<string, StatementSync>();
  statements.set(db, known);
  const statement = known.get(sql) ?? db.prepare(sql);
  known.set(sql, statement);
  return statement;
}

/** Books that are read still and written no more. */
const readOnly = new WeakSet<DatabaseSync>();

/** From now on every write is refused as `broken`: what would be added to a damaged file is lost with it. */
export const refuseWrites = ({ db }: Book): void => void readOnly.add(db);

export const refusesWrites = ({ db }: Book): boolean => readOnly.has(db);

/** What SQLite says of the contents of a row, which its digest tells better; the file's own structure is whole then. */
const ABOUT_A_ROW = /^(CHECK constraint failed|(NULL|TEXT|NUMERIC|non-\w+) value in) /;

/** True where the file's pages and tables hold together: a look of milliseconds. Never throws. */
export function isSound({ db }: Book): boolean {
  try {
    const lines = db.prepare('PRAGMA quick_check(20)').all();
    return lines.every((row) => {
      const line = String(row.quick_check);
      return line === 'ok' || ABOUT_A_ROW.test(line);
    });
  } catch {
    return false;
  }
}

/** Runs `work` in one transaction that holds the write lock from its start. Throws BookError where it can't be written. */
export function inOneWrite<T>(book: Book, work: () => T): T {
  if (refusesWrites(book)) throw new BookError('broken');
  return named(() => {
    book.db.exec('BEGIN IMMEDIATE');
    try {
      const result = work();
      book.db.exec('COMMIT');
      return result;
    } catch (error) {
      if (book.db.isTransaction) book.db.exec('ROLLBACK');
      throw error;
    }
  });
}

function prepare(db: DatabaseSync): void {
  checkIdentity(db);
  // Written ahead and synced at each commit: what was answered for is on disk.
  db.exec('PRAGMA journal_mode = WAL');
  db.exec('PRAGMA synchronous = FULL');
  db.exec('PRAGMA foreign_keys = ON');
  // What is erased is overwritten, not only unlinked.
  db.exec('PRAGMA secure_delete = ON');
  db.function('fold', { deterministic: true }, (text) => fold(String(text)));
  knowDigest(db);
  migrate(db);
}

function checkIdentity(db: DatabaseSync): void {
  const tables = pragma(db, 'SELECT count(*) AS value FROM sqlite_schema');
  const version = pragma(db, 'SELECT user_version AS value FROM pragma_user_version');
  const id = pragma(db, 'SELECT application_id AS value FROM pragma_application_id');
  if (tables > 0 && id !== APPLICATION_ID) throw new BookError('not-a-book');
  if (version > MIGRATIONS.length) throw new BookError('newer-book');
}

function migrate(db: DatabaseSync): void {
  if (pragma(db, 'SELECT user_version AS value FROM pragma_user_version') === MIGRATIONS.length) return;
  db.exec('BEGIN IMMEDIATE');
  try {
    // Read again under the lock: another bench may have been first.
    const from = pragma(db, 'SELECT user_version AS value FROM pragma_user_version');
    for (const step of MIGRATIONS.slice(from)) db.exec(step);
    if (from < DIGESTS_SINCE) trustAll(db);
    db.exec(`PRAGMA application_id = ${APPLICATION_ID}`);
    db.exec(`PRAGMA user_version = ${MIGRATIONS.length}`);
    db.exec('COMMIT');
  } catch (error) {
    // On a full disk SQLite has taken it back by itself.
    if (db.isTransaction) db.exec('ROLLBACK');
    throw error;
  }
}

function pragma(db: DatabaseSync, sql: string): number {
  return Number(db.prepare(sql).get()?.value);
}

/** Folds case and accents, so that "moller" finds "Møller"'s neighbours as a reader would look for them. */
export function fold(text: string): string {
  return text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll('ß', 'ss')
    .replaceAll('ø', 'o');
}
