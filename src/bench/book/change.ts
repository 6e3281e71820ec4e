/** Changes to an order, each with its line of history. */
import { ORDER_STATES, type OrderState } from '#words/benchCodes.ts';
import { inOneWrite, type Book } from './open.ts';
import { record } from './receive.ts';

/** `changed-meanwhile`: another window or bench was first; look again. */
export type ChangeOutcome = 'done' | 'no-such-order' | 'changed-meanwhile';

export type Change =
  | { readonly kind: 'state'; readonly state: OrderState }
  /** Day, `2026-12-20`; null takes it away. */
  | { readonly kind: 'due'; readonly on: string | null }
  | { readonly kind: 'note'; readonly text: string }
  /** A prepared message was opened; its name. */
  | { readonly kind: 'message'; readonly message: string };

/** Longest note of the maker's own. */
export const NOTE_CAP = 4000;

/**
 * Changes one order.
 * @param version the order's version that the maker was looking at
 * @throws BookError where it can't be written; RangeError for a state, day or note that no form sends
 */
export function change(
  book: Book,
  number: string,
  version: number,
  at: string,
  wanted: Change,
): ChangeOutcome {
  check(wanted);
  return inOneWrite(book, () => {
    const row = book.db.prepare('SELECT version FROM orders WHERE number = ?').get(number);
    if (row === undefined) return 'no-such-order';
    if (Number(row.version) !== version) return 'changed-meanwhile';
    apply(book, number, at, wanted);
    book.db.prepare('UPDATE orders SET version = version + 1 WHERE number = ?').run(number);
    return 'done';
  });
}

function apply(book: Book, number: string, at: string, wanted: Change): void {
  if (wanted.kind === 'state') {
    book.db.prepare('UPDATE orders SET state = ? WHERE number = ?').run(wanted.state, number);
    record(book, number, at, { kind: 'state', text: wanted.state });
  } else if (wanted.kind === 'due') {
    book.db.prepare('UPDATE orders SET due_on = ? WHERE number = ?').run(wanted.on, number);
    record(book, number, at, { kind: 'due', text: wanted.on ?? '' });
  } else if (wanted.kind === 'note') record(book, number, at, { kind: 'note', text: wanted.text });
  else record(book, number, at, { kind: 'message', text: wanted.message });
}

function check(wanted: Change): void {
  if (wanted.kind === 'state' && !ORDER_STATES.includes(wanted.state)) throw new RangeError(wanted.state);
  if (wanted.kind === 'due' && wanted.on !== null && !isDay(wanted.on)) throw new RangeError(wanted.on);
  if (wanted.kind === 'note' && (wanted.text === '' || wanted.text.length > NOTE_CAP)) {
    throw new RangeError('note');
  }
}

/** True for a day of the calendar, `2026-12-20`. */
export function isDay(text: string): boolean {
  if (!/^2\d{3}-\d{2}-\d{2}$/.test(text)) return false;
  const ms = Date.parse(text);
  return Number.isFinite(ms) && new Date(ms).toISOString().startsWith(text);
}
