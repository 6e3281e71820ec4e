/** An order as it stands in the book. */
import type { Delivery, OrderDocument } from '#order/document.ts';
import { migrate } from '#order/migrate.ts';
import type { OrderState, OrderWay } from '#words/benchCodes.ts';
import type { Book } from './open.ts';
import { named } from './problem.ts';

/** An amount of money. */
export type Sum = {
  readonly minor: number;
  /** ISO 4217. */
  readonly currency: string;
};

/** States in which there is still something to do. */
export const OPEN_STATES: readonly OrderState[] = ['new', 'asked', 'agreed', 'strung'];

export type Entry = {
  /** As it came in, save that it goes where the maker has entered since. */
  readonly document: OrderDocument;
  /** By the maker's clock, ISO 8601, UTC. */
  readonly receivedAt: string;
  readonly way: OrderWay;
  readonly state: OrderState;
  /** Day, `2026-12-20`; null for none. */
  readonly dueOn: string | null;
  /** Of the piece as it stood when the order came in; null where its revision was not known then. */
  readonly snapshotId: number | null;
  /** What was agreed on for all of it; null before that, and where the book kept no money then. */
  readonly agreed: Sum | null;
  readonly version: number;
  readonly erasedAt: string | null;
};

/** What is kept of one thing that happened. */
export type Happening =
  | { readonly kind: 'received'; readonly text: OrderWay }
  | { readonly kind: 'state'; readonly text: OrderState }
  /** Its own number. */
  | { readonly kind: 'invoice'; readonly text: string }
  /** The id of a payment that was written down, or struck out again; of a parcel. */
  | { readonly kind: 'payment' | 'struck' | 'parcel'; readonly text: string }
  /** `reason`: why the change before it was made, in her words. */
  | { readonly kind: 'due' | 'note' | 'reason' | 'message' | 'address' | 'erased'; readonly text: string };

export type Event = Happening & { readonly at: string };

export type Row = Readonly<Record<string, string | number | bigint | null | Uint8Array>>;

/** One order by its number; null where the book has none. Throws BookError. */
export function findEntry(book: Book, number: string): Entry | null {
  return named(() => {
    const row = book.db.prepare('SELECT * FROM orders WHERE number = ?').get(number) as Row | undefined;
    return row === undefined ? null : toEntry(row);
  });
}

/** What happened to an order, in the order it happened, whatever the clock said. Throws BookError. */
export function history(book: Book, number: string): Event[] {
  return named(() => {
    const rows = book.db.prepare('SELECT at, kind, text FROM event WHERE number = ? ORDER BY id').all(number);
    return rows as Event[];
  });
}

/** The document of a row: kept as it came in, read in today's version. */
export function documentOf(row: Row): OrderDocument {
  const kept = JSON.parse(String(row.document)) as Readonly<Record<string, unknown>>;
  return migrate(kept) as OrderDocument;
}

const deliveryOf = (row: Row): Delivery => JSON.parse(String(row.delivery)) as Delivery;

export function toEntry(row: Row): Entry {
  return {
    document: row.delivery === null ? documentOf(row) : { ...documentOf(row), delivery: deliveryOf(row) },
    receivedAt: String(row.received_at),
    way: row.way as OrderWay,
    state: row.state as OrderState,
    dueOn: row.due_on as string | null,
    snapshotId: row.snapshot as number | null,
    agreed:
      row.agreed_minor === null
        ? null
        : { minor: Number(row.agreed_minor), currency: String(row.agreed_currency) },
    version: Number(row.version),
    erasedAt: row.erased_at as string | null,
  };
}
