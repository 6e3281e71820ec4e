/** Money by month. */
import type { Row } from './entry.ts';
import { toInvoice, type Invoice } from './invoices.ts';
import type { Book } from './open.ts';
import { toPayment, type Payment } from './payments.ts';
import { named } from './problem.ts';

/** Months in which money went or something was invoiced, the newest first: `2026-11`. Throws BookError. */
export function moneyMonths(book: Book): string[] {
  return named(() =>
    book.db
      .prepare(
        `SELECT substr(day, 1, 7) AS month FROM payment
         UNION SELECT substr(issued_at, 1, 7) FROM invoice ORDER BY month DESC`,
      )
      .all()
      .map(({ month }) => String(month)),
  );
}

/** Payments by the day they went, invoices by the day they were issued. Throws BookError. */
export function moneyOfMonth(
  book: Book,
  month: string,
): { readonly payments: Payment[]; readonly invoices: Invoice[] } {
  return named(() => ({
    payments: book.db
      .prepare('SELECT * FROM payment WHERE substr(day, 1, 7) = ? ORDER BY day, id')
      .all(month)
      .map((row) => toPayment(row as Row)),
    invoices: book.db
      .prepare('SELECT * FROM invoice WHERE substr(issued_at, 1, 7) = ? ORDER BY rowid')
      .all(month)
      .map((row) => toInvoice(row as Row)),
  }));
}
