/** Every measure that one strand can meet within tolerance, as exact intervals. */
import type { StrandLimits } from './fit.ts';
import type { Measure } from './measure.ts';
import type { Outcome } from './outcome.ts';
import type { FitProblem } from './problem.ts';
import { findNearest, findWithin } from './search.ts';

/** Closed at both ends, nm. */
export type Interval = { readonly fromNm: number; readonly toNm: number };

/** Compared in whole hundredths, two intervals no further apart than this leave no size between them. */
const TOUCH_NM = 10_000;
/** Steps of one cover. A step covers at least a bead's length, so a real strand takes some dozens. */
const MOST_STEPS = 5000;

/** The piece that reaches furthest among those which still meet `fromNm`; null where none goes beyond it. */
function onward(problem: FitProblem, measure: Measure, fromNm: number, toleranceNm: number): Outcome | null {
  // Without its extender a piece that starts just within reach goes furthest.
  const closed: Measure = {
    ...measure,
    of: (counts) => {
      const { lowNm } = measure.of(counts);
      return { lowNm, highNm: lowNm };
    },
  };
  const wanted = { targetNm: fromNm + toleranceNm, toleranceNm: 0 };
  const far = findNearest(problem, closed, wanted, 'below');
  if (far !== null && measure.of(far.counts).highNm + toleranceNm > fromNm) return far;
  // With an extender another may start earlier and yet go beyond: asked outright, so that no gap is claimed falsely.
  const just = findWithin(problem, measure, { targetNm: fromNm + 2 * TOUCH_NM, toleranceNm });
  return just !== null && measure.of(just.counts).highNm + toleranceNm > fromNm ? just : null;
}

/**
 * The union of all `[measure − tolerance, measure + tolerance]`, from the
 * smallest piece to the largest, found by stepping from reach to reach: no
 * piece is left out, few are looked at.
 * @throws TooLarge
 */
export function coverOf(
  problem: FitProblem,
  measure: Measure,
  limits: StrandLimits,
  toleranceNm: number,
): Interval[] {
  const intervals: Interval[] = [];
  let fromNm = limits.least.span.lowNm - toleranceNm;
  let toNm = measure.of(limits.least.counts).highNm + toleranceNm;
  const endNm = limits.most.span.highNm + toleranceNm;
  for (let step = 0; step < MOST_STEPS && toNm < endNm; step += 1) {
    const next = onward(problem, measure, toNm, toleranceNm);
    if (next !== null) {
      toNm = measure.of(next.counts).highNm + toleranceNm;
      continue;
    }
    const beyond = findNearest(problem, measure, { targetNm: toNm, toleranceNm: 0 }, 'above');
    if (beyond === null) break;
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
  return shared.sort((a, b) => a.fromNm - b.fromNm);
}

export function shift(intervals: readonly Interval[], byNm: number): Interval[] {
  return intervals.map(({ fromNm, toNm }) => ({ fromNm: fromNm + byNm, toNm: toNm + byNm }));
}
