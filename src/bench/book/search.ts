/** Looking through the book. */
import { ORDER_STATES, type OrderState } from '#words/benchCodes.ts';
import {
  isState,
  OPEN_STATES,
  readRow,
  toUnreadable,
  type Entry,
  type Row,
  type Unreadable,
} from './entry.ts';
import { unkept } from './keptDigest.ts';
import { fold, type Book } from './open.ts';
import { named } from './problem.ts';

/** `open`: still something to do. `late`: open and past its due day. `owing`: agreed on, and money is still to come or to go back. */
export type Filter = {
  readonly text: string;
  readonly state: OrderState | 'open' | 'late' | 'owing' | 'all';
  /** Today, `2026-11-25`. */
  readonly today: string;
  /** From 0. */
  readonly page: number;
};

export const PAGE_SIZE = 50;
/** Longest text that is looked for. */
const TEXT_CAP = 100;

export type SearchResult = {
  readonly entries: readonly Entry[];
  /** Among those that match: orders that can't be read any more. */
  readonly unreadable: readonly Unreadable[];
  /** How many match in all. */
  readonly total: number;
};

/** What came in for an order and is still here. */
const HERE = `(
  SELECT coalesce(sum(CASE kind WHEN 'paid' THEN minor ELSE -minor END), 0) FROM payment
  WHERE payment.number = orders.number AND struck_at IS NULL AND currency = coalesce(agreed_currency, currency))`;

const MATCHES = `
  WHERE ($late = 0 OR due_on < $today)
    AND ($owing = 0 OR CASE state WHEN 'cancelled' THEN 0 ELSE agreed_minor END <> ${HERE})
    AND (state IN (SELECT value FROM json_each($states)) OR state NOT IN (SELECT value FROM json_each($known)))
    AND ($text = '' OR instr(fold(
      number || ' ' || replace(number, '-', '') || ' ' || CASE WHEN json_valid(document) THEN
      (document ->> '$.buyer.name') || ' ' || (document ->> '$.buyer.email') || ' ' ||
      (document ->> '$.buyer.note') || ' ' || (document ->> '$.piece.id') ELSE '' END || ' ' ||
      CASE WHEN json_valid(document) AND json_valid(coalesce(delivery, '{}')) THEN
      coalesce(delivery ->> '$.to.name', document ->> '$.delivery.to.name', '') || ' ' ||
      coalesce(delivery ->> '$.to.postcode', document ->> '$.delivery.to.postcode', '') || ' ' ||
      coalesce(delivery ->> '$.to.town', document ->> '$.delivery.to.town', '') ELSE '' END || ' ' ||
      coalesce((SELECT group_concat(text, ' ') FROM event
                WHERE event.number = orders.number AND kind = 'note'), '')
    ), $text) > 0)`;

/** Orders that match: those with a due day first, soonest at the top, then the newest. Throws BookError. */
export function search(book: Book, filter: Filter): SearchResult {
  const values = {
    $late: filter.state === 'late' ? 1 : 0,
    $owing: filter.state === 'owing' ? 1 : 0,
    $today: filter.today,
    $states: JSON.stringify(statesOf(filter.state)),
    // An order whose state can't be read belongs to none, and must not be missing from all.
    $known: JSON.stringify(ORDER_STATES),
    $text: fold(filter.text.trim().slice(0, TEXT_CAP)),
  };
  return named(() => {
    const { $today, ...rest } = values;
    const total = book.db.prepare(`SELECT count(*) AS total FROM orders ${MATCHES}`).get({ ...rest, $today });
    const rows = book.db
      .prepare(
        `SELECT * FROM orders ${MATCHES}
         ORDER BY due_on IS NULL, due_on, received_at DESC, number LIMIT $size OFFSET $from`,
      )
      .all({ ...values, $size: PAGE_SIZE, $from: Math.max(0, Math.trunc(filter.page)) * PAGE_SIZE });
    const read = rows.map((row) => readRow(row as Row));
    return {
      entries: read.filter((entry) => entry !== null),
      unreadable: rows
        .filter((_, at) => read[at] === null)
        .map((row) => toUnreadable(row as Row))
        .filter(({ erasedAt }) => erasedAt === null),
      total: Number(total?.total),
    };
  });
}

/** How many orders stand in each state. Throws BookError. */
export function countByState(book: Book): Readonly<Record<OrderState, number>> {
  return named(() => {
    const rows = book.db.prepare('SELECT state, count(*) AS many FROM orders GROUP BY state').all();
    const counts = Object.fromEntries(ORDER_STATES.map((state) => [state, 0])) as Record<OrderState, number>;
    for (const row of rows) if (isState(row.state)) counts[row.state] = Number(row.many);
    return counts;
  });
}

/** All orders of the book, the oldest first. */
export type AllOrders = {
  readonly entries: readonly Entry[];
  /** Those that can't be read any more. */
  readonly unreadable: readonly Unreadable[];
  /** Numbers of those that can be read, and of which something that was entered later was changed on the disk. */
  readonly altered: ReadonlySet<string>;
};

/** Throws BookError. */
export function allOrders(book: Book): AllOrders {
  return named(() => {
    const rows = book.db.prepare('SELECT * FROM orders ORDER BY received_at, number').all() as Row[];
    const read = rows.map(readRow);
    return {
      entries: read.filter((entry) => entry !== null),
      altered: unkept(
        book,
        'order',
        rows.map(({ number }) => String(number)),
      ),
      unreadable: rows.filter((_, at) => read[at] === null).map(toUnreadable),
    };
  });
}

/** Numbers of those that can't be read any more, though nobody erased them. Throws BookError. */
export const unreadableNumbers = (book: Book): string[] =>
  named(() =>
    (
      book.db
        .prepare('SELECT * FROM orders WHERE erased_at IS NULL ORDER BY received_at, number')
        .all() as Row[]
    )
      .filter((row) => readRow(row) === null)
      .map(({ number }) => String(number)),
  );

/** Every order that can be read, oldest first. Throws BookError. */
export const allEntries = (book: Book): Entry[] => entriesIn(book, ORDER_STATES);

/** Every order that can be read, in one of some states, oldest first. Throws BookError. */
export function entriesIn(book: Book, states: readonly OrderState[]): Entry[] {
  return named(() =>
    book.db
      .prepare(
        'SELECT * FROM orders WHERE state IN (SELECT value FROM json_each(?)) ORDER BY received_at, number',
      )
      .all(JSON.stringify(states))
      .flatMap((row) => readRow(row as Row) ?? []),
  );
}

function statesOf(wanted: Filter['state']): readonly OrderState[] {
  if (wanted === 'all' || wanted === 'owing') return ORDER_STATES;
  if (wanted === 'open' || wanted === 'late') return OPEN_STATES;
  return [wanted];
}
