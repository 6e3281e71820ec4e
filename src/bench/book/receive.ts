/** Taking orders in: once on disk, and never twice. */
import type { OrderDocument } from '#order/document.ts';
import type { OrderWay } from '#words/benchCodes.ts';
import { documentOf, type Happening, type Row } from './entry.ts';
import { vouch } from './keptDigest.ts';
import { inOneWrite, prepared, type Book } from './open.ts';
import { keepSnapshot, sha256, snapshotOfRevision, type Snapshot } from './snapshot.ts';

export type Arrival = {
  readonly document: OrderDocument;
  readonly way: OrderWay;
  /** The maker's clock, ISO 8601. */
  readonly at: string;
  /** The piece as it stands now; null where the catalogue has no such piece. */
  readonly now: Snapshot | null;
};

/** `received`: new in the book. `same`: it was there already. `number-taken`: another order has that number. */
export type Reception = {
  readonly outcome: 'received' | 'same' | 'number-taken';
  readonly number: string;
  /** When the order with that number first came in. */
  readonly receivedAt: string;
};

/**
 * Takes several orders in with one write to disk: all of them, or none.
 * @returns a reception for each, in turn
 * @throws BookError; then none of them is in the book
 */
export function receive(book: Book, arrivals: readonly Arrival[]): Reception[] {
  return inOneWrite(book, () => arrivals.map((arrival) => receiveOne(book, arrival)));
}

function receiveOne(book: Book, arrival: Arrival): Reception {
  const { document, at, now } = arrival;
  const { number } = document;
  const content = canonical(document);
  const digest = sha256(content);
  const known = prepared(
    book,
    'SELECT document, digest, received_at, erased_at FROM orders WHERE number = ?',
  ).get(number) as Row | undefined;
  if (known !== undefined) {
    // Once erased there is nothing left to compare; the number alone says it. An order of an older
    // version may come again in a newer one, so both are compared in today's.
    const same = known.erased_at !== null || known.digest === digest || canonical(kept(known)) === content;
    // What was damaged in the book meanwhile is whole again.
    if (known.digest === digest && known.document !== content) {
      prepared(book, 'UPDATE orders SET document = ? WHERE number = ?').run(content, number);
    }
    return { outcome: same ? 'same' : 'number-taken', number, receivedAt: String(known.received_at) };
  }
  const current = now === null ? null : keepSnapshot(book, now, at);
  const snapshot =
    now?.revision === document.piece.revision
      ? current
      : snapshotOfRevision(book, document.piece.id, document.piece.revision);
  prepared(
    book,
    `INSERT INTO orders (number, document, digest, received_at, way, state, snapshot)
     VALUES (?, ?, ?, ?, ?, 'new', ?)`,
  ).run(number, content, digest, at, arrival.way, snapshot);
  record(book, number, at, { kind: 'received', text: arrival.way });
  vouch(book, 'order', number);
  return { outcome: 'received', number, receivedAt: at };
}

/** The document of a known order; null where it can't be read any more. */
function kept(row: Row): OrderDocument | null {
  try {
    return documentOf(row);
  } catch {
    return null;
  }
}

/** Writes a line of history. Call inside a write. */
export function record(book: Book, number: string, at: string, { kind, text }: Happening): void {
  prepared(book, 'INSERT INTO event (number, at, kind, text) VALUES (?, ?, ?, ?)').run(
    number,
    at,
    kind,
    text,
  );
}

/** The document as JSON with its names in one order, so that the same order is the same text. */
function canonical(value: unknown): string {
  return JSON.stringify(value, (_, inner: unknown) =>
    typeof inner === 'object' && inner !== null && !Array.isArray(inner)
      ? Object.fromEntries(Object.entries(inner).sort(([a], [b]) => (a < b ? -1 : 1)))
      : inner,
  );
}
