/** The whole book in one file, and back. */
import { rmSync } from 'node:fs';
import { DatabaseSync } from 'node:sqlite';
import { checkBackup } from './checkBackup.ts';
import { BESIDE, inOneWrite, keepPrivate, openBook, type Book } from './open.ts';
import { named } from './problem.ts';

/** Tables that a backup carries, in an order that foreign keys allow. Passphrase, visits and paired devices stay with the machine. */
const TABLES = [
  'snapshot',
  'orders',
  'event',
  'payment',
  'invoice',
  'parcel',
  'movement',
  'written_stock',
  'place',
  'board_time',
  'kept_digest',
] as const;

/** Writes a copy of the whole book to a new file, at one moment, while the bench goes on. Throws BookError. */
export function backUp(book: Book, target: string): void {
  keepPrivate(target);
  named(() => book.db.prepare('VACUUM INTO ?').run(target));
  const copy = new DatabaseSync(target);
  try {
    // The copy leaves the machine: nothing in it opens the bench.
    copy.exec(
      'PRAGMA secure_delete = ON; DELETE FROM setting; DELETE FROM visit; DELETE FROM pairing; DELETE FROM device; VACUUM',
    );
  } finally {
    copy.close();
  }
}

/**
 * Puts a backup in the book's place: all of it, or nothing. Orders that are harmed in it are in the book then as
 * they are in the backup, under their numbers, with all that belongs to them.
 * @param source a backup of this or an older version; it is brought to this version where it lies
 * @param told `markOf` the harm that she was told of and wants all the same; '' for none
 * @returns how many orders the book holds then
 * @throws BookError, HarmedBackup, the book as it was
 */
export function restore(book: Book, source: string, told = ''): number {
  const { unreadable } = checkBackup(source, told);
  // Migrates an older one.
  openBook(source).db.close();
  named(() => book.db.prepare('ATTACH ? AS incoming').run(source));
  try {
    return inOneWrite(book, () => {
      for (const table of TABLES.toReversed()) book.db.exec(`DELETE FROM main.${table}`);
      for (const table of TABLES) {
        if (table === 'orders') bringOrders(book, JSON.stringify(unreadable));
        else book.db.exec(`INSERT INTO main.${table} SELECT * FROM incoming.${table}`);
      }
      // The higher count stands: a number that went out after the backup was made must not go out again.
      // (WHERE true: else SQLite reads ON as a join's.)
      book.db.exec(`
        INSERT INTO main.invoice_count SELECT * FROM incoming.invoice_count WHERE true
        ON CONFLICT (prefix) DO UPDATE SET last = max(last, excluded.last)`);
      const row = book.db.prepare('SELECT count(*) AS many FROM main.orders').get();
      return Number(row?.many);
    });
  } finally {
    book.db.exec('DETACH incoming');
    for (const end of BESIDE) rmSync(source + end, { force: true });
  }
}

/** What can't be read may be what the table wouldn't take; all else passes its checks. @param unreadable numbers, as JSON */
function bringOrders(book: Book, unreadable: string): void {
  const some = (not: 'NOT' | ''): void => {
    book.db
      .prepare(
        `INSERT INTO main.orders SELECT * FROM incoming.orders
         WHERE number ${not} IN (SELECT value FROM json_each(?))`,
      )
      .run(unreadable);
  };
  some('NOT');
  book.db.exec('PRAGMA ignore_check_constraints = ON');
  try {
    some('');
  } finally {
    book.db.exec('PRAGMA ignore_check_constraints = OFF');
  }
}
