/** Parcels as they stand in the book: who carries them and under which number. */
import type { Row } from './entry.ts';
import type { Book } from './open.ts';
import { named } from './problem.ts';
import { record } from './receive.ts';

/** What the maker enters. */
export type EnteredParcel = {
  /** '' where she named none. */
  readonly carrier: string;
  /** '' where the carrier gave none. */
  readonly tracking: string;
  /** Day, `2026-12-20`. */
  readonly sentOn: string;
};

export type Parcel = EnteredParcel & { readonly id: number };

/** Longest name of a carrier, and longest tracking number: far above any that is in use. */
export const PARCEL_CAPS = { carrier: 40, tracking: 60 } as const;

/** An order's parcels in the order in which they were entered. Throws BookError. */
export function parcelsOf(book: Book, number: string): Parcel[] {
  return named(() =>
    book.db
      .prepare('SELECT * FROM parcel WHERE number = ? ORDER BY id')
      .all(number)
      .map((row) => toParcel(row as Row)),
  );
}

/** Writes a parcel down. Call inside a write. */
export function sendParcel(book: Book, number: string, at: string, parcel: EnteredParcel): void {
  const { carrier, tracking, sentOn } = parcel;
  const made = book.db
    .prepare('INSERT INTO parcel (number, carrier, tracking, sent_on, at) VALUES (?, ?, ?, ?, ?)')
    .run(number, carrier, tracking, sentOn, at);
  record(book, number, at, { kind: 'parcel', text: String(made.lastInsertRowid) });
}

function toParcel(row: Row): Parcel {
  return {
    id: Number(row.id),
    carrier: String(row.carrier),
    tracking: String(row.tracking),
    sentOn: String(row.sent_on),
  };
}
