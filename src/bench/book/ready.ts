/** Orders for a piece as it lies finished: there is one of it, and who asked first is told so. */
import type { OrderState } from '#words/benchCodes.ts';
import { readRow, type Entry, type Row } from './entry.ts';
import type { Book } from './open.ts';
import { named } from './problem.ts';

/** States in which it is promised. */
const PROMISED: readonly OrderState[] = ['agreed', 'strung', 'sent'];
/** States in which somebody has asked, and nothing is agreed on. */
const ASKED: readonly OrderState[] = ['new', 'asked'];

/** `lies`: nobody else has asked. `asked-before`: somebody has, and nothing is agreed. `gone`: it is promised, or sent. */
export type ReadyStanding =
  | { readonly is: 'lies' }
  /** `number`: of the other order. */
  | { readonly is: 'asked-before' | 'gone'; readonly number: string };

/** Orders for pieces as they lie, oldest first. Throws BookError. */
export function readyEntries(book: Book): Entry[] {
  return named(() =>
    book.db
      // Looked for as text first: what is damaged is passed over, and few orders need be read.
      .prepare(
        `SELECT * FROM orders WHERE instr(document, '"made":"ready"') > 0 ORDER BY received_at, number`,
      )
      .all()
      .flatMap((row) => readRow(row as Row) ?? [])
      .filter(({ document }) => document.made === 'ready'),
  );
}

/**
 * How it stands with the one that lies there, for one order.
 * @param entries of `readyEntries`
 * @param own the order's number and when it came in
 * @param liesSince what was ordered before that day is another that is gone; null where nothing is said
 */
export function readyStanding(
  entries: readonly Entry[],
  piece: string,
  own: { readonly number: string; readonly receivedAt: string },
  liesSince: string | null,
): ReadyStanding {
  const others = entries.filter(
    ({ document, receivedAt }) =>
      document.piece.id === piece && document.number !== own.number && receivedAt >= (liesSince ?? ''),
  );
  const gone = others.find(({ state }) => PROMISED.includes(state));
  if (gone !== undefined) return { is: 'gone', number: gone.document.number };
  const before = others.find(
    ({ state, receivedAt, document }) =>
      ASKED.includes(state) &&
      (receivedAt < own.receivedAt || (receivedAt === own.receivedAt && document.number < own.number)),
  );
  return before === undefined ? { is: 'lies' } : { is: 'asked-before', number: before.document.number };
}

/** Pieces of which the one that lay finished is promised, each with when that order came in. Throws BookError. */
export function promisedPieces(book: Book): { readonly piece: string; readonly receivedAt: string }[] {
  return readyEntries(book)
    .filter(({ state }) => PROMISED.includes(state))
    .map(({ document, receivedAt }) => ({ piece: document.piece.id, receivedAt }));
}
