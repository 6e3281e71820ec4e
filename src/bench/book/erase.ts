/** Forgetting buyers: names, addresses and words go, figures and dates stay. */
import { EITHER_HAND, type OrderDocument } from '#order/document.ts';
import { inEveryCopy } from './copies.ts';
import { RESTRING } from '#words/benchCodes.ts';
import { readRow, type Row } from './entry.ts';
import { eraseInvoices } from './invoices.ts';
import { keeping } from './keptDigest.ts';
import { inOneWrite, type Book } from './open.ts';
import { named } from './problem.ts';
import { record } from './receive.ts';

export type Erased = { readonly count: number; readonly unreached: readonly string[] };

/**
 * Erases what tells who a buyer is: name, addresses, note, choices, what the maker wrote
 * of her own on the order, and the numbers of its parcels. Sums and days of payments stay:
 * they tell of no one. The bytes are overwritten in the file and its log.
 * So it is done in every copy that the bench keeps beside the book.
 * @param invoicesBefore ISO 8601: invoices issued before it lose name and address too, later ones have to be kept; null: all lose them
 * @returns how many orders were erased, and the names of the copies that could not be reached
 * @throws BookError
 */
export function erase(
  book: Book,
  numbers: readonly string[],
  at: string,
  invoicesBefore: string | null = null,
): Erased {
  const unreached = inEveryCopy(book, (copy) => eraseIn(copy, numbers, at, invoicesBefore));
  return { count: eraseIn(book, numbers, at, invoicesBefore), unreached };
}

function eraseIn(book: Book, numbers: readonly string[], at: string, invoicesBefore: string | null): number {
  const erased = inOneWrite(
    book,
    () =>
      numbers.filter((number) =>
        keeping(book, 'order', number, () => {
          const order = eraseOne(book, number, at);
          return eraseInvoices(book, number, at, invoicesBefore) > 0 || order;
        }),
      ).length,
  );
  // The log still holds the old pages until it is written back and cut.
  named(() => book.db.exec('PRAGMA wal_checkpoint(TRUNCATE)'));
  return erased;
}

/**
 * Numbers of closed orders whose keeping time is over, and of those erased before whose invoices had to be kept until now.
 * @param before ISO 8601: closed before this instant
 * @param invoicesBefore ISO 8601: invoices issued before it need be kept no longer; null: none need be kept
 */
export function overdueForErasing(
  book: Book,
  before: string,
  invoicesBefore: string | null = null,
): string[] {
  return named(() =>
    book.db
      .prepare(
        `SELECT number FROM orders
         WHERE erased_at IS NULL AND state IN ('sent', 'cancelled')
           AND (SELECT max(at) FROM event WHERE event.number = orders.number) < $before
         UNION
         SELECT number FROM orders
         WHERE erased_at IS NOT NULL AND number IN (
           SELECT number FROM invoice WHERE erased_at IS NULL AND ($invoices IS NULL OR issued_at < $invoices))
         ORDER BY number`,
      )
      .all({ $before: before, $invoices: invoicesBefore })
      .map((row) => String(row.number)),
  );
}

function eraseOne(book: Book, number: string, at: string): boolean {
  const row = book.db.prepare('SELECT * FROM orders WHERE number = ? AND erased_at IS NULL').get(number);
  if (row === undefined) return false;
  const document = readRow(row as Row)?.document ?? null;
  const kept: OrderDocument | null = document && {
    ...document,
    // What was done stays; any other choice may be words of hers.
    choices: {
      ...(document.choices.work === RESTRING.work && RESTRING),
      ...(document.choices.hand === EITHER_HAND.hand && EITHER_HAND),
    },
    buyer: { name: '', email: '', note: '' },
    delivery: { by: 'unsaid' },
  };
  book.db
    .prepare(
      `UPDATE orders SET document = ?, digest = NULL, delivery = NULL, erased_at = ?, version = version + 1
       WHERE number = ?`,
    )
    // Of one that can't be read nothing is kept: who bought it may stand anywhere in it.
    .run(JSON.stringify(kept ?? {}), at, number);
  book.db.prepare(`UPDATE event SET text = '' WHERE number = ? AND kind IN ('note', 'reason')`).run(number);
  // By its number a carrier tells where a parcel went.
  book.db.prepare(`UPDATE parcel SET tracking = '' WHERE number = ?`).run(number);
  record(book, number, at, { kind: 'erased', text: '' });
  return true;
}
