/** Invoices and credit notes: each with a number that never comes twice, and what it says kept as it was said. */
import { dayOf } from '#words/day.ts';
import type { ChangeProblem, InvoiceKind } from '#words/benchCodes.ts';
import type { Row } from './entry.ts';
import type { InvoiceContent } from './invoiceContent.ts';
import type { Book } from './open.ts';
import { named } from './problem.ts';
import { record } from './receive.ts';

export type Invoice = {
  /** Its own number. */
  readonly invoice: string;
  /** Of its order. */
  readonly number: string;
  readonly kind: InvoiceKind;
  /** The invoice that a credit note takes back; null on an invoice. */
  readonly corrects: string | null;
  readonly issuedAt: string;
  readonly content: InvoiceContent;
  /** When the buyer's name and address were taken out of it. */
  readonly erasedAt: string | null;
};

/** An order's invoices and credit notes, oldest first. Throws BookError. */
export function invoicesOf(book: Book, number: string): Invoice[] {
  return named(() =>
    book.db
      .prepare('SELECT * FROM invoice WHERE number = ? ORDER BY rowid')
      .all(number)
      .map((row) => toInvoice(row as Row)),
  );
}

/** One by its own number; null where the book has none. Throws BookError. */
export function findInvoice(book: Book, invoice: string): Invoice | null {
  return named(() => {
    const row = book.db.prepare('SELECT * FROM invoice WHERE invoice = ?').get(invoice);
    return row === undefined ? null : toInvoice(row as Row);
  });
}

/** The invoice of an order that hasn't been taken back; null for none. */
export function standing(all: readonly Invoice[]): Invoice | null {
  const taken = new Set(all.map(({ corrects }) => corrects));
  return all.find(({ invoice, kind }) => kind === 'invoice' && !taken.has(invoice)) ?? null;
}

/** Issues an invoice. Call inside a write. @returns why it can't be, null where it is done */
export function issueInvoice(
  book: Book,
  number: string,
  at: string,
  prefix: string,
  content: InvoiceContent,
): ChangeProblem | null {
  const stands = standing(invoicesOf(book, number));
  if (stands !== null) return { code: 'invoice-stands', invoice: stands.invoice };
  write(book, { number, kind: 'invoice', corrects: null, at, prefix, content });
  return null;
}

/** Takes an invoice back by a credit note over all of it. Call inside a write. */
export function issueCreditNote(
  book: Book,
  number: string,
  at: string,
  prefix: string,
  corrects: string,
  reason: string,
): ChangeProblem | null {
  const stands = standing(invoicesOf(book, number));
  if (stands === null || stands.invoice !== corrects) return { code: 'changed-meanwhile' };
  if (reason === '') return { code: 'reason-missing' };
  const issuedOn = dayOf(at);
  const content = { ...stands.content, issuedOn, payments: [], openMinor: 0, reason };
  write(book, { number, kind: 'credit-note', corrects, at, prefix, content });
  return null;
}

type Issued = {
  readonly number: string;
  readonly kind: InvoiceKind;
  readonly corrects: string | null;
  readonly at: string;
  readonly prefix: string;
  readonly content: InvoiceContent;
};

/** The count goes up in the same write as the invoice that bears it: none is skipped, none given twice. */
function write(book: Book, { number, kind, corrects, at, prefix, content }: Issued): void {
  const counted = book.db
    .prepare(
      `INSERT INTO invoice_count (prefix, last) VALUES (?, 1)
       ON CONFLICT (prefix) DO UPDATE SET last = last + 1 RETURNING last`,
    )
    .get(prefix);
  const invoice = invoiceNumber(prefix, Number(counted?.last));
  book.db
    .prepare(
      'INSERT INTO invoice (invoice, number, kind, corrects, issued_at, content) VALUES (?, ?, ?, ?, ?, ?)',
    )
    .run(invoice, number, kind, corrects, at, JSON.stringify(content));
  record(book, number, at, { kind: 'invoice', text: invoice });
}

/** `2026-0001`: four figures, more where there are more. */
function invoiceNumber(prefix: string, count: number): string {
  return prefix + String(count).padStart(4, '0');
}

/** So many missing numbers are named. */
const MOST_MISSING = 50;

/** Numbers that were given out and aren't in the book: issued after the backup that was put back. Throws BookError. */
export function missingInvoices(book: Book): string[] {
  return named(() => {
    const known = new Set(
      book.db
        .prepare('SELECT invoice FROM invoice')
        .all()
        .map((row) => row.invoice),
    );
    const missing: string[] = [];
    for (const { prefix, last } of book.db.prepare('SELECT * FROM invoice_count ORDER BY prefix').all()) {
      for (let count = 1; count <= Number(last) && missing.length < MOST_MISSING; count += 1) {
        const invoice = invoiceNumber(String(prefix), count);
        if (!known.has(invoice)) missing.push(invoice);
      }
    }
    return missing;
  });
}

/**
 * Takes the buyer, and the maker's reasons, out of an order's invoices. Call inside a write.
 * @param before ISO 8601: only those issued before this instant, the others have to be kept as they are; null: all
 * @returns how many
 */
export function eraseInvoices(book: Book, number: string, at: string, before: string | null): number {
  const due = invoicesOf(book, number).filter(
    ({ erasedAt, issuedAt }) => erasedAt === null && (before === null || issuedAt < before),
  );
  for (const { invoice, content } of due) {
    const kept = { ...content, buyer: { name: '', address: [] }, reason: '' };
    book.db
      .prepare('UPDATE invoice SET content = ?, erased_at = ? WHERE invoice = ?')
      .run(JSON.stringify(kept), at, invoice);
  }
  return due.length;
}

export function toInvoice(row: Row): Invoice {
  return {
    invoice: String(row.invoice),
    number: String(row.number),
    kind: row.kind as InvoiceKind,
    corrects: row.corrects as string | null,
    issuedAt: String(row.issued_at),
    content: JSON.parse(String(row.content)) as InvoiceContent,
    erasedAt: row.erased_at as string | null,
  };
}
