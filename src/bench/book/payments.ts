/** Payments and refunds as they stand in the book. A line is never changed; one entered by mistake is struck out. */
import type { LedgerProblem, PaymentKind, PaymentWay } from '#words/benchCodes.ts';
import type { Row, Sum } from './entry.ts';
import { ledgerOf, refusalOf, type Ledger } from './ledger.ts';
import type { Book } from './open.ts';
import { named } from './problem.ts';
import { record } from './receive.ts';

/** What the maker enters. */
export type Entered = Sum & {
  readonly kind: PaymentKind;
  /** When the money went, `2026-12-20`. */
  readonly day: string;
  readonly way: PaymentWay;
};

export type Payment = Entered & {
  readonly id: number;
  /** Of its order. */
  readonly number: string;
  /** When it was entered, ISO 8601. */
  readonly at: string;
  /** When it was struck out, as entered by mistake; null where it counts. */
  readonly struckAt: string | null;
};

/** An order's payments in the order in which they were entered. Throws BookError. */
export function paymentsOf(book: Book, number: string): Payment[] {
  return named(() =>
    book.db
      .prepare('SELECT * FROM payment WHERE number = ? ORDER BY id')
      .all(number)
      .map((row) => toPayment(row as Row)),
  );
}

/** What an order's payments in its own currency come to; those in another, or struck out, don't count. */
export function ledgerFor(due: Sum, payments: readonly Payment[]): Ledger {
  return ledgerOf(
    due.minor,
    payments.filter((one) => counts(one, due)),
  );
}

/** True where a payment counts towards what is due. */
export function counts({ struckAt, currency }: Payment, due: Sum): boolean {
  return struckAt === null && currency === due.currency;
}

/** Writes a payment down. Call inside a write. @returns why it can't be, null where it is done */
export function enter(
  book: Book,
  number: string,
  at: string,
  due: Sum,
  entered: Entered,
  really: boolean,
): LedgerProblem | null {
  const refusal = refusalOf(ledgerFor(due, paymentsOf(book, number)), entered, really, due.currency);
  if (refusal !== null) return refusal;
  const { kind, minor, currency, day, way } = entered;
  const made = book.db
    .prepare('INSERT INTO payment (number, kind, minor, currency, day, way, at) VALUES (?, ?, ?, ?, ?, ?, ?)')
    .run(number, kind, minor, currency, day, way, at);
  record(book, number, at, { kind: 'payment', text: String(made.lastInsertRowid) });
  return null;
}

/** Strikes a payment out. Call inside a write. @returns why it can't be: what was paid back of it would be more than was paid */
export function strike(book: Book, number: string, at: string, id: number): LedgerProblem | null {
  const all = paymentsOf(book, number);
  const wanted = all.find((one) => one.id === id && one.struckAt === null);
  if (wanted === undefined) return null;
  const left = all.filter((one) => one !== wanted && counts(one, wanted));
  const { paidMinor, refundedMinor } = ledgerOf(0, left);
  if (refundedMinor > paidMinor) return { code: 'refund-rests-on-it' };
  book.db.prepare('UPDATE payment SET struck_at = ? WHERE id = ?').run(at, id);
  record(book, number, at, { kind: 'struck', text: String(id) });
  return null;
}

export function toPayment(row: Row): Payment {
  return {
    id: Number(row.id),
    number: String(row.number),
    kind: row.kind as PaymentKind,
    minor: Number(row.minor),
    currency: String(row.currency),
    day: String(row.day),
    way: row.way as PaymentWay,
    at: String(row.at),
    struckAt: row.struck_at as string | null,
  };
}
