/** Orders of one year: those that came in, and those that were sent. */
import { readRow, type Entry, type Row } from './entry.ts';
import type { Book } from './open.ts';
import { named } from './problem.ts';

export type YearEntry = {
  readonly entry: Entry;
  /** When it was last set to sent, ISO 8601; null for an order that isn't sent now. */
  readonly sentAt: string | null;
};

const SENT_AT = `(SELECT max(at) FROM event
  WHERE event.number = orders.number AND kind = 'state' AND text = 'sent' AND orders.state = 'sent')`;

/** Orders that were received or sent in a year, oldest first. @param year four figures. Throws BookError. */
export function entriesOfYear(book: Book, year: string): YearEntry[] {
  return named(() =>
    book.db
      .prepare(
        `SELECT *, ${SENT_AT} AS sent_at FROM orders
         WHERE substr(received_at, 1, 4) = $year OR substr(${SENT_AT}, 1, 4) = $year
         ORDER BY received_at, number`,
      )
      .all({ $year: year })
      .flatMap((row) => {
        const entry = readRow(row as Row);
        return entry === null ? [] : [{ entry, sentAt: row.sent_at as string | null }];
      }),
  );
}

/** Years in which something came in, newest first. Throws BookError. */
export function yearsOf(book: Book): string[] {
  return named(() =>
    book.db
      .prepare('SELECT DISTINCT substr(received_at, 1, 4) AS year FROM orders ORDER BY year DESC')
      .all()
      .map((row) => String(row.year)),
  );
}
