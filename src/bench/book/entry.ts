/** An order as it stands in the book. */
import type { Delivery, OrderDocument } from '#order/document.ts';
import { migrate, readDocument } from '#order/migrate.ts';
import { ORDER_STATES, ORDER_WAYS, type OrderState, type OrderWay } from '#words/benchCodes.ts';
import type { Book } from './open.ts';
import { BookError, named } from './problem.ts';
import { sha256 } from './snapshot.ts';

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
  /** Of the piece as it stood when that was agreed on; null before, and where the book didn't keep it then. */
  readonly agreedSnapshotId: number | null;
  readonly version: number;
  readonly erasedAt: string | null;
  /** Its bytes are not those that came in: it can be read still, and something in it is wrong. */
  readonly damaged: boolean;
};

/** What is certain of an order that can't be read any more. */
export type Unreadable = Pick<Entry, 'receivedAt'> & {
  readonly number: string;
  /** Null where that can't be read either. */
  readonly state: OrderState | null;
  /** Once its buyer was erased nothing is left to be read; null for one that should be readable. */
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
  | {
      readonly kind: 'due' | 'note' | 'reason' | 'message' | 'address' | 'looked-over' | 'erased';
      readonly text: string;
    };

export type Event = Happening & { readonly at: string };

export type Row = Readonly<Record<string, string | number | bigint | null | Uint8Array>>;

/** One order by its number; null where the book has none. Throws BookError, `order-damaged` where it can't be read. */
export function findEntry(book: Book, number: string): Entry | null {
  return named(() => {
    const row = rowOf(book, number);
    return row === undefined ? null : toEntry(row);
  });
}

const rowOf = (book: Book, number: string): Row | undefined =>
  book.db.prepare('SELECT * FROM orders WHERE number = ?').get(number) as Row | undefined;

/** Whether the book has an order with that number, readable or not. Throws BookError. */
export function hasNumber(book: Book, number: string): boolean {
  return named(() => book.db.prepare('SELECT 1 FROM orders WHERE number = ?').get(number) !== undefined);
}

/** The same, null too where it can't be read any more. */
export function findReadable(book: Book, number: string): Entry | null {
  return named(() => {
    const row = rowOf(book, number);
    return row === undefined ? null : readRow(row);
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

/** Where it goes by what she entered; null where she entered nothing, and in books of before she could. */
const enteredIn = ({ delivery = null }: Row): Delivery | null =>
  delivery === null ? null : (JSON.parse(String(delivery)) as Delivery);

/** An order as its row holds it. Throws BookError for one that can't be read any more. */
export function toEntry(row: Row): Entry {
  const entry = readRow(row);
  if (entry === null) throw new BookError('order-damaged');
  return entry;
}

/** The same for lists, which one damaged row doesn't take down; null for one that can't be read. */
export function readRow(row: Row): Entry | null {
  const soundness = soundnessOf(row);
  return soundness === 'unreadable' ? null : entryOf(row, soundness === 'damaged');
}

/** What is left of an order's document, whatever it is; null where the book has no such order. Throws BookError. */
export function remainsOf(book: Book, number: string): string | null {
  return named(() => {
    const row = book.db.prepare('SELECT document FROM orders WHERE number = ?').get(number);
    return row === undefined ? null : String(row.document);
  });
}

export function toUnreadable(row: Row): Unreadable {
  return {
    number: String(row.number),
    receivedAt: String(row.received_at),
    state: isState(row.state) ? row.state : null,
    erasedAt: row.erased_at as string | null,
  };
}

/** What a list for other programs says of an order: `erased` where nothing was left to be read, `altered` where it isn't what came in. */
export type Damage = '' | 'altered' | 'unreadable' | 'erased';

/** @param altered whether something that was entered later is not as it was */
export function damageOf(one: Entry | Unreadable, altered = false): Damage {
  if ('document' in one) return one.damaged || altered ? 'altered' : '';
  return one.erasedAt === null ? 'unreadable' : 'erased';
}

/** By the digest taken when the order came in; an erased order has none, so what it holds is read instead. */
function soundnessOf(row: Row): 'sound' | 'damaged' | 'unreadable' {
  const sound = row.digest === null || sha256(String(row.document)) === row.digest;
  if (!isState(row.state) || !ORDER_WAYS.some((way) => way === row.way)) return 'unreadable';
  if ((row.delivery ?? null) === null && sound && row.digest !== null) return 'sound';
  if (!isOrder(row)) return 'unreadable';
  return sound ? 'sound' : 'damaged';
}

/** True for a row whose document and address are an order's, or were before its buyer was erased. */
export function isOrder(row: Row): boolean {
  try {
    const document = documentOf(row);
    const delivery = enteredIn(row) ?? document.delivery;
    const buyer = row.erased_at === null ? document.buyer : SOMEONE;
    return readDocument({ ...document, delivery, buyer }).ok && document.number === row.number;
  } catch {
    return false;
  }
}

/** For what a row says. */
export const isState = (value: Row[string] | undefined): value is OrderState =>
  ORDER_STATES.some((state) => state === value);

const SOMEONE = { name: 'x', email: 'x@example.org', note: '' };

function entryOf(row: Row, damaged: boolean): Entry {
  const document = documentOf(row);
  return {
    document: { ...document, delivery: enteredIn(row) ?? document.delivery },
    receivedAt: String(row.received_at),
    way: row.way as OrderWay,
    state: row.state as OrderState,
    dueOn: row.due_on as string | null,
    snapshotId: row.snapshot as number | null,
    agreed:
      row.agreed_minor === null
        ? null
        : { minor: Number(row.agreed_minor), currency: String(row.agreed_currency) },
    agreedSnapshotId: (row.agreed_snapshot ?? null) as number | null,
    version: Number(row.version),
    erasedAt: row.erased_at as string | null,
    damaged,
  };
}
