/** The whole book in one file, and back. */
import { rmSync } from 'node:fs';
import { DatabaseSync } from 'node:sqlite';
import { migrate, readDocument } from '#order/migrate.ts';
import { isInvoiceContent } from './invoiceContent.ts';
import { APPLICATION_ID, MIGRATIONS } from './migrations.ts';
import { BESIDE, inOneWrite, keepPrivate, openBook, type Book } from './open.ts';
import { BookError, named } from './problem.ts';

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
 * Puts a backup in the book's place: all of it, or nothing.
 * @param source a backup of this or an older version; it is brought to this version where it lies
 * @returns how many orders the book holds then
 * @throws BookError, the book as it was
 */
export function restore(book: Book, source: string): number {
  checkBackup(source);
  // Migrates an older one.
  openBook(source).db.close();
  named(() => book.db.prepare('ATTACH ? AS incoming').run(source));
  try {
    return inOneWrite(book, () => {
      for (const table of TABLES.toReversed()) book.db.exec(`DELETE FROM main.${table}`);
      for (const table of TABLES) book.db.exec(`INSERT INTO main.${table} SELECT * FROM incoming.${table}`);
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

/** An uploaded file is opened read-only first, and believed only if SQLite finds it whole. Throws BookError. */
export function checkBackup(source: string): void {
  const check = (): void => {
    const db = new DatabaseSync(source, { readOnly: true });
    try {
      const value = (sql: string): unknown => Object.values(db.prepare(sql).get() ?? {})[0];
      if (value('PRAGMA application_id') !== APPLICATION_ID) throw new BookError('not-a-book');
      const version = Number(value('PRAGMA user_version'));
      if (version > MIGRATIONS.length) throw new BookError('newer-book');
      if (value('PRAGMA integrity_check') !== 'ok') throw new BookError('broken');
      if (db.prepare('PRAGMA foreign_key_check').all().length > 0) throw new BookError('broken');
      // Triggers and views have no place in a book and could run on what is read.
      const extra = value(`SELECT count(*) FROM sqlite_schema WHERE type IN ('trigger', 'view')`);
      if (extra !== 0) throw new BookError('not-a-book');
      if (!db.prepare('SELECT * FROM orders').all().every(holdsOrder)) {
        throw new BookError('broken');
      }
      if (version >= WITH_INVOICES && !db.prepare('SELECT content FROM invoice').all().every(holdsInvoice)) {
        throw new BookError('broken');
      }
    } finally {
      db.close();
    }
  };
  named(check);
}

/** The version of the book that brought invoices. */
const WITH_INVOICES = 3;

function holdsInvoice(row: Readonly<Record<string, unknown>>): boolean {
  return isInvoiceContent(JSON.parse(String(row.content)));
}

/** True for a row whose document is an order, or was one before its buyer was erased. */
function holdsOrder(row: Readonly<Record<string, unknown>>): boolean {
  const kept = JSON.parse(String(row.document)) as Record<string, unknown>;
  // Books of before have no such column.
  const entered = row.delivery ?? null;
  const document =
    entered === null ? kept : { ...migrate(kept), delivery: JSON.parse(String(entered)) as unknown };
  const someone = { name: 'x', email: 'x@example.org', note: '' };
  return readDocument(row.erased_at === null ? document : { ...document, buyer: someone }).ok;
}
