/**
 * Orders that wait on this device until the maker has them. Every change is
 * read from the store and written back at once, so that two tabs, a reload or
 * a closed window lose nothing.
 */
import type { OrderDocument } from '#order/document.ts';
import { readDocument } from '#order/migrate.ts';
import type { SendProblem } from '#words/orderFacts.ts';
import type { Store } from '../../model/ports.ts';
import { readText, writeText } from './outboxText.ts';

/**
 * `waiting`: to be sent by itself. `refused`: the shop won't take it as it is.
 * `mail`: the buyer sends it herself. `mailed`: she says that she did.
 * `handed`: a form service took it, and the maker hasn't confirmed. `received`: there is a receipt.
 */
const STATES = ['waiting', 'refused', 'mail', 'mailed', 'handed', 'received'] as const;
export type EntryState = (typeof STATES)[number];

export type Entry = {
  readonly order: OrderDocument;
  /** Name of the piece as the buyer read it. */
  readonly pieceName: string;
  readonly state: EntryState;
  /** Times it was tried in vain. */
  readonly tries: number;
  /** Not tried by itself before then, ms since 1970. */
  readonly nextTryMs: number;
  readonly problem: SendProblem | null;
  /** ISO 8601, from the receipt; null without one. */
  readonly receivedAt: string | null;
  /** True where the shop calculated otherwise than this page: the maker sees both. */
  readonly differs: boolean;
  /** True where somebody asked for the same finished piece before; left out by older entries. */
  readonly askedBefore?: boolean;
};

/** Far more than one person orders; keeps the store small if something goes wrong. */
const MOST_ENTRIES = 50;

/** A fresh entry for an order. */
export function newEntry(order: OrderDocument, pieceName: string, state: 'waiting' | 'mail'): Entry {
  return { order, pieceName, state, tries: 0, nextTryMs: 0, problem: null, receivedAt: null, differs: false };
}

/** What is kept, oldest first, orders of older versions in today's. Anything that is no entry is passed over, never thrown at. */
export function readOutbox(store: Store): readonly Entry[] {
  try {
    const kept: unknown = JSON.parse(readText(store));
    return Array.isArray(kept) ? kept.flatMap(toEntry) : [];
  } catch {
    return [];
  }
}

/** Adds an entry, or puts it in the place of the one with its number. False where it can't be kept. */
export function putEntry(store: Store, entry: Entry): boolean {
  const kept = readOutbox(store);
  const at = kept.findIndex(({ order }) => order.number === entry.order.number);
  const next = at < 0 ? [...kept, entry] : kept.with(at, entry);
  return writeText(store, JSON.stringify(next.slice(-MOST_ENTRIES)));
}

/** Takes an entry out; one that isn't there is no matter. */
export function dropEntry(store: Store, number: string): void {
  writeText(store, JSON.stringify(readOutbox(store).filter(({ order }) => order.number !== number)));
}

/** The entry in a list of one; none where it is none. */
function toEntry(value: unknown): Entry[] {
  if (typeof value !== 'object' || value === null) return [];
  const entry = value as Partial<Record<keyof Entry, unknown>>;
  const read = readDocument(entry.order);
  const whole =
    typeof entry.pieceName === 'string' &&
    STATES.some((state) => state === entry.state) &&
    Number.isInteger(entry.tries) &&
    typeof entry.nextTryMs === 'number';
  return read.ok && whole ? [{ ...(value as Entry), order: read.document }] : [];
}
