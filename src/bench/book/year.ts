/** Orders of one year by the maker's calendar: those that came in, and those that were sent. */
import { dayOf } from '#words/day.ts';
import { readRow, type Entry, type Row } from './entry.ts';
import type { Book } from './open.ts';
import { named } from './problem.ts';

export type YearEntry = {
  readonly entry: Entry;
  readonly receivedOn: string;
  /** The day it was last set to sent; null for an order that isn't sent now. */
  readonly sentOn: string | null;
};

const SENT_AT = `(SELECT max(at) FROM event
  WHERE event.number = orders.number AND kind = 'state' AND text = 'sent' AND orders.state = 'sent')`;
/** As `dayOf` has it. */
const yearOf = (instant: string): string => `strftime('%Y', ${instant}, 'localtime')`;

/** Orders that were received or sent in a year, oldest first. @param year four figures. Throws BookError. */
export function entriesOfYear(book: Book, year: string): YearEntry[] {
  return named(() =>
    book.db
      .prepare(
        `SELECT *, ${SENT_AT} AS sent_at FROM orders
         WHERE ${yearOf('received_at')} = $year OR ${yearOf(SENT_AT)} = $year
         ORDER BY received_at, number`,
      )
      .all({ $year: year })
      .flatMap((row) => {
        const entry = readRow(row as Row);
        const sentAt = row.sent_at as string | null;
        if (entry === null) return [];
        return [
          { entry, receivedOn: dayOf(entry.receivedAt), sentOn: sentAt === null ? null : dayOf(sentAt) },
        ];
      }),
  );
}

/** Years in which something came in, newest first. Throws BookError. */
export function yearsOf(book: Book): string[] {
  return named(() =>
    book.db
      .prepare(`SELECT DISTINCT ${yearOf('received_at')} AS year FROM orders ORDER BY year DESC`)
      .all()
      .map((row) => String(row.year)),
  );
}
