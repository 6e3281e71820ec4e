/** Every measure that one strand can meet within tolerance, as exact intervals. */
import type { StrandLimits } from './fit.ts';
import type { Outcome } from './outcome.ts';
import type { Search } from './questions.ts';
import { TooLarge } from './tooLarge.ts';

/** Closed at both ends, nm. */
export type Interval = { readonly fromNm: number; readonly toNm: number };

/** Compared in whole hundredths, two intervals no further apart than this leave no size between them. */
const TOUCH_NM = 10_000;
/** Steps of one cover. A step covers at least a bead's length, so a real strand takes some dozens. */
const MOST_STEPS = 5000;

/** A step worth taking at once, as a share of the tolerance: smaller ones are looked for only if need be. */
const GOOD_STEP = 0.3;

/** A piece that still meets `fromNm` and reaches beyond it, be it by a millionth: at no tolerance the one just met would do for ever. Null where none does. */
function onward(search: Search, fromNm: number, toleranceNm: number): Outcome | null {
  const lastNm = fromNm + toleranceNm + TOUCH_NM;
  const good = search.between(fromNm + Math.max(1, GOOD_STEP * toleranceNm), lastNm);
  return good ?? search.between(fromNm - toleranceNm + 1, lastNm);
}

/**
 * The union of all `[measure − tolerance, measure + tolerance]`, from the
 * smallest piece to the largest, found by stepping from reach to reach: no
 * piece is left out, few are looked at.
 * @throws TooLarge
 */
export function coverOf(search: Search, limits: StrandLimits, toleranceNm: number): Interval[] {
  const intervals: Interval[] = [];
  let fromNm = limits.least.span.lowNm - toleranceNm;
  let toNm = limits.least.span.highNm + toleranceNm;
  const endNm = limits.most.span.highNm + toleranceNm;
  for (let step = 0; toNm < endNm; step += 1) {
    if (step > MOST_STEPS) throw new TooLarge();
    const next = onward(search, toNm, toleranceNm);
    if (next !== null) {
      toNm = next.span.highNm + toleranceNm;
      continue;
    }
    // The largest piece isn't reached yet, so there is one beyond.
    const beyond = search.nearest(toNm + 1, 'above')!;
    intervals.push({ fromNm, toNm });
    fromNm = beyond.span.lowNm - toleranceNm;
    toNm = beyond.span.highNm + toleranceNm;
  }
  intervals.push({ fromNm, toNm });
  return intervals;
}

/** What two covers share. Both ordered and apart, and so is the answer. */
export function intersect(one: readonly Interval[], other: readonly Interval[]): Interval[] {
  const shared: Interval[] = [];
  for (const a of one) {
    for (const b of other) {
      const fromNm = Math.max(a.fromNm, b.fromNm);
      const toNm = Math.min(a.toNm, b.toNm);
      if (fromNm <= toNm) shared.push({ fromNm, toNm });
    }
  }
  return shared;
}
