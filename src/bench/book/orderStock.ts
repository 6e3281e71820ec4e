/** What an order takes out of the trays when it is strung, and gives back where it turns out not to be. */
import type { OrderState } from '#words/benchCodes.ts';
import { addLine, balances, linesOf, takeBack, type Moment } from './movements.ts';
import { inOneWrite, prepared, type Book } from './open.ts';

/** All that one order takes. */
export type Takes = {
  /** Pieces by component. */
  readonly parts: ReadonlyMap<string, number>;
  /** By the wire's key: every cut on its own, whole millimetres. */
  readonly cuts: ReadonlyMap<string, readonly number[]>;
  /** What is left of an offcut is kept from this length on, mm. */
  readonly keepOffcutMm: number;
};

/** States in which a piece has been strung. */
const STRUNG: readonly OrderState[] = ['strung', 'sent'];

/** A cut, and what it is cut from: an offcut by its length, mm, or the reel. */
export type CutFrom = { readonly cutMm: number; readonly offcut: number | null };

/**
 * Which offcuts to use: the longest cut first, each from the shortest that is
 * long enough, so that long ones stay for long cuts.
 */
export function cutsFrom(cuts: readonly number[], offcuts: readonly number[]): CutFrom[] {
  const left = offcuts.toSorted((a, b) => a - b);
  return cuts
    .toSorted((a, b) => b - a)
    .map((cutMm) => {
      const at = left.findIndex((mm) => mm >= cutMm);
      const [offcut = null] = at < 0 ? [] : left.splice(at, 1);
      return { cutMm, offcut };
    });
}

/**
 * Moves what an order's new state moves. Only things that are counted are
 * moved: what had no line before takes none now. Call inside a write, before
 * the state is written.
 * @param takes null where that isn't known, or nothing is strung for it
 */
export function moveForState(
  book: Book,
  moment: Moment,
  number: string,
  from: OrderState,
  to: OrderState,
  takes: Takes | null,
): void {
  if (to === 'cancelled') return;
  const before = from === 'cancelled' ? lastBeforeCancelled(book, number) : from;
  const [was, is] = [STRUNG.includes(before), STRUNG.includes(to)];
  if (was && !is) for (const line of linesOf(book, number).toReversed()) takeBack(book, moment, line);
  if (!was && is && takes !== null) take(book, moment, takes, { number, note: '' });
}

/** What an order was before it was cancelled: its pieces may be strung and lie there. */
function lastBeforeCancelled(book: Book, number: string): OrderState {
  const row = prepared(
    book,
    `SELECT text FROM event WHERE number = ? AND kind = 'state' AND text <> 'cancelled' ORDER BY id DESC LIMIT 1`,
  ).get(number);
  return (row?.text as OrderState | undefined) ?? 'new';
}

/**
 * Takes out of the trays what pieces take that nobody ordered: for the shelf, or a fair.
 * @param note which pieces
 * @returns how many things were taken from; 0 where none of them is counted
 * @throws BookError
 */
export function takeWithoutOrder(book: Book, moment: Moment, takes: Takes, note: string): number {
  return inOneWrite(book, () => {
    take(book, moment, takes, { number: null, note });
    const there = balances(book);
    return [...takes.parts.keys(), ...takes.cuts.keys()].filter((thing) => there.has(thing)).length;
  });
}

type Reason = { readonly number: string | null; readonly note: string };

function take(book: Book, moment: Moment, takes: Takes, reason: Reason): void {
  const there = balances(book);
  for (const [thing, count] of takes.parts) {
    if (there.has(thing) && count > 0) {
      addLine(book, moment, { thing, kind: 'strung', amount: -count, ...reason });
    }
  }
  for (const [thing, cuts] of takes.cuts) {
    const balance = there.get(thing);
    if (balance === undefined) continue;
    for (const { cutMm, offcut } of cutsFrom(cuts, balance.offcuts)) {
      addLine(book, moment, { thing, kind: 'strung', amount: -cutMm, offcut, ...reason });
      const restMm = offcut === null ? 0 : offcut - cutMm;
      if (restMm === 0) continue;
      const kept = restMm >= takes.keepOffcutMm;
      const kind = kept ? 'put-aside' : 'broken';
      addLine(book, moment, { thing, kind, amount: -restMm, offcut, ...reason });
      if (kept) addLine(book, moment, { thing, kind, amount: restMm, offcut: restMm, ...reason });
    }
  }
}
