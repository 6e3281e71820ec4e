/** What a backup holds, looked at before any of it is believed. */
import { DatabaseSync } from 'node:sqlite';
import { isOrder, readRow, type Row } from './entry.ts';
import { isInvoiceContent } from './invoiceContent.ts';
import { knowDigest, unkeptSql } from './keptSql.ts';
import { APPLICATION_ID, DIGESTS_SINCE, MIGRATIONS } from './migrations.ts';
import { BookError, isOfSchema, named } from './problem.ts';
import { sha256 } from './snapshot.ts';

/** Orders of a backup, by number, that aren't what was written, in a file that holds together all the same. */
export type Harm = {
  /** What was ordered can't be read any more. */
  readonly unreadable: readonly string[];
  /** It can be read, and something in it is wrong. */
  readonly altered: readonly string[];
};

/** Thrown for a backup with harmed orders, as long as the maker hasn't been told of these very ones. */
export class HarmedBackup extends Error {
  readonly harm: Harm;
  constructor(harm: Harm) {
    super('backup with harmed orders');
    this.name = 'HarmedBackup';
    this.harm = harm;
  }
}

/** Stands for what she was told of, in the form by which she says that she wants it all the same. */
export const markOf = (harm: Harm): string => sha256(JSON.stringify([harm.unreadable, harm.altered]));

/**
 * An uploaded file is opened read-only first, and believed only if SQLite finds it whole.
 * @param told `markOf` what she has been told of and wants all the same; '' for nothing
 * @returns what is harmed in it, all of which she was told of
 * @throws BookError; HarmedBackup where she must be told first
 */
export function checkBackup(source: string, told = ''): Harm {
  const harm = named(() => {
    const db = new DatabaseSync(source, { readOnly: true });
    try {
      return look(db);
    } catch (error) {
      throw isOfSchema(error) ? new BookError('broken', { cause: error }) : error;
    } finally {
      db.close();
    }
  });
  const isHarmed = harm.unreadable.length + harm.altered.length > 0;
  if (isHarmed && markOf(harm) !== told) throw new HarmedBackup(harm);
  return harm;
}

/** More lines than these and no file is worth a look. */
const MOST_LINES = 1_000_000;

/** What SQLite says of orders that the table wouldn't take as they are now: they are told by their numbers. */
const ABOUT_AN_ORDER = 'CHECK constraint failed in orders';

function look(db: DatabaseSync): Harm {
  const value = (sql: string): unknown => Object.values(db.prepare(sql).get() ?? {})[0];
  if (value('PRAGMA application_id') !== APPLICATION_ID) throw new BookError('not-a-book');
  const version = Number(value('PRAGMA user_version'));
  if (version > MIGRATIONS.length) throw new BookError('newer-book');
  const lines = db.prepare(`PRAGMA integrity_check(${MOST_LINES})`).all();
  const isWhole = lines.every((row) => ['ok', ABOUT_AN_ORDER].includes(String(row.integrity_check)));
  if (!isWhole || lines.length >= MOST_LINES) throw new BookError('broken');
  if (db.prepare('PRAGMA foreign_key_check').all().length > 0) throw new BookError('broken');
  // Triggers and views have no place in a book and could run on what is read.
  const extra = value(`SELECT count(*) FROM sqlite_schema WHERE type IN ('trigger', 'view')`);
  if (extra !== 0) throw new BookError('not-a-book');
  if (version >= WITH_INVOICES && !db.prepare('SELECT content FROM invoice').all().every(holdsInvoice)) {
    throw new BookError('broken');
  }
  const harm = harmOf(db);
  return version < DIGESTS_SINCE ? harm : { ...harm, altered: withUnkept(db, harm) };
}

/** With those of which something else than the document isn't what was entered. */
function withUnkept(db: DatabaseSync, { unreadable, altered }: Harm): string[] {
  knowDigest(db);
  const others = db.prepare(unkeptSql('order')).all();
  const numbers = others.map(({ key }) => String(key)).filter((number) => !unreadable.includes(number));
  return [...new Set([...altered, ...numbers])];
}

function harmOf(db: DatabaseSync): Harm {
  const unreadable: string[] = [];
  const altered: string[] = [];
  for (const row of db.prepare('SELECT * FROM orders ORDER BY received_at, number').iterate()) {
    const entry = readRow(row as Row);
    // Its digest fits: what stands there was made so, and by no bench.
    if (entry?.damaged === false && !isOrder(row as Row)) throw new BookError('broken');
    // Of one that was erased when it couldn't be read any more, nothing is to be read.
    if (entry === null && row.erased_at !== null && row.document === '{}') continue;
    if (entry === null) unreadable.push(String(row.number));
    else if (entry.damaged) altered.push(String(row.number));
  }
  return { unreadable, altered };
}

/** The version of the book that brought invoices. */
const WITH_INVOICES = 3;

function holdsInvoice(row: Readonly<Record<string, unknown>>): boolean {
  return isInvoiceContent(JSON.parse(String(row.content)));
}
