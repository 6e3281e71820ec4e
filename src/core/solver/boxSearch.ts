/**
 * The search for any measure: branch and bound over boxes of counts. Exact: a box is dropped only where
 * the measures of its corners prove that no choice in it can be the answer.
 */
import { inStock, leastCost, mixesZero, shrink, split, withoutCorner, wholeBox, type Box } from './box.ts';
import { linearBound, type LinearBound } from './linearBound.ts';
import type { Measure } from './measure.ts';
import {
  compareNearest,
  compareOutcomes,
  HUNDREDTH_NM,
  evaluate,
  toHundredths,
  type Outcome,
  type Span,
  type Wanted,
} from './outcome.ts';
import type { FitProblem } from './problem.ts';
import type { Search } from './questions.ts';
import { SearchLimit } from './searchLimit.ts';

/** Boxes looked at for one question where each is measured. Real pieces need some hundreds; a design made to need more is refused. */
export const MOST_BOXES = 100_000;
/** The same of a plain sum, whose boxes cost a fiftieth: lengths that must be met to the hundredth take many. */
const MOST_SUM_BOXES = 1_000_000;

/** Counts the boxes of one question. */
function spending({ eachNm }: Measure): () => void {
  let left = eachNm === null ? MOST_BOXES : MOST_SUM_BOXES;
  return () => {
    left -= 1;
    if (left < 0) throw new SearchLimit();
  };
}

/** Anything that rounds to the tolerance in whole hundredths is within it. */
function reachNm(wanted: Wanted): number {
  return (toHundredths(wanted.toleranceNm) + 0.5) * HUNDREDTH_NM;
}

/** Whether the bounds of a measure hold for the whole of a box. */
const isBounded = (measure: Measure, box: Box): boolean => !(measure.zeroApart && mixesZero(box));

/** What the budget and the stock leave of a plain sum's box; none for any other measure. */
function linearBoundOf(problem: FitProblem, { eachNm, of }: Measure): LinearBound | null {
  return eachNm === null ? null : linearBound(problem, eachNm, of);
}

/**
 * Whether a box surely holds nothing between two measures: by its corners, bounded
 * only where the guess says that may decide, or by what the budget and the stock leave.
 */
function holdsNothing(
  measure: Measure,
  linear: LinearBound | null,
  box: Box,
  budget: number,
  fromNm: number,
  toNm: number,
): boolean {
  if (!isBounded(measure, box)) return false;
  const { least, most, guessNm, guessOffNm } = measure;
  if (guessNm(box.low) > toNm - guessOffNm && least(box.low).lowNm > toNm) return true;
  if (guessNm(box.high) < fromNm + guessOffNm && most(box.high).highNm < fromNm) return true;
  const span = linear?.(box, budget) ?? null;
  return span !== null && (span.lowNm > toNm || span.highNm < fromNm);
}

/** The best piece within tolerance and within a cost budget, or null. */
function bestWithin(
  problem: FitProblem,
  measure: Measure,
  wanted: Wanted,
  budget: number,
  spend: () => void,
): Outcome | null {
  const reach = reachNm(wanted);
  const fromNm = wanted.targetNm - reach;
  const toNm = wanted.targetNm + reach;
  const linear = linearBoundOf(problem, measure);
  let best: Outcome | null = null;
  const tryOne = (counts: readonly number[]): void => {
    const outcome = evaluate(problem, wanted, counts, measure.of(counts));
    if (outcome.excess > 0) return;
    if (best === null || compareOutcomes(problem, outcome, best) < 0) best = outcome;
  };
  const visit = (whole: Box): void => {
    spend();
    const left = best === null ? budget : best.cost;
    const box = shrink(problem, whole, left);
    if (box === null) return;
    if (holdsNothing(measure, linear, box, left, fromNm, toNm)) return;
    const parted = split(box, measure.zeroApart);
    if (parted === null) {
      tryOne(box.low);
      return;
    }
    const [lower, upper] = parted;
    const lowerFirst = leastCost(problem, lower) <= leastCost(problem, upper);
    for (const half of lowerFirst ? [lower, upper] : [upper, lower]) visit(half);
  };
  visit(wholeBox(problem));
  return best;
}

/** The dearest change that the maker allows. */
function dearest(problem: FitProblem): number {
  return problem.sections.reduce(
    (sum, { cost, usual, fewest, most }) => sum + cost * Math.max(usual - fewest, most - usual),
    0,
  );
}

/**
 * The best piece within tolerance by the order of preference, or null where
 * there is none. Budgets grow, so that only what costs little is looked at
 * while that is enough.
 * @throws SearchLimit
 */
function findWithin(problem: FitProblem, measure: Measure, wanted: Wanted): Outcome | null {
  const spend = spending(measure);
  const most = dearest(problem);
  const step = problem.sections.reduce(
    (least, { cost }) => (cost > 0 ? Math.min(least, cost) : least),
    Infinity,
  );
  let budget = 0;
  for (;;) {
    const found = bestWithin(problem, measure, wanted, budget, spend);
    if (found !== null || budget >= most) return found;
    budget = Math.min(most, Math.max(budget + step, Math.ceil(budget * 1.5)));
  }
}

/**
 * The nearest piece on one side of the target: the largest not above it
 * (`below`) or the smallest not below it (`above`); null where there is none.
 * @throws SearchLimit
 */
function findNearest(
  problem: FitProblem,
  measure: Measure,
  wanted: Wanted,
  side: 'below' | 'above',
): Outcome | null {
  const spend = spending(measure);
  const { targetNm } = wanted;
  const below = side === 'below';
  const linear = linearBoundOf(problem, measure);
  let best: Outcome | null = null;
  /** How far a measure lies on the wanted side, nm; negative where it lies on the other. */
  const off = (span: Span): number => (below ? targetNm - span.highNm : span.lowNm - targetNm);
  const tooFar = (nm: number): boolean => best !== null && toHundredths(nm) > best.error;
  const tryOne = (counts: readonly number[]): void => {
    if (!inStock(problem, counts)) return;
    const span = measure.of(counts);
    if (off(span) < 0) return;
    const outcome = evaluate(problem, wanted, counts, span);
    if (best === null || compareNearest(problem, outcome, best) < 0) best = outcome;
  };
  const visit = (whole: Box): void => {
    spend();
    const box = shrink(problem, whole, Infinity);
    if (box === null) return;
    const near = below ? box.high : box.low;
    const highNm = linear?.(box, Infinity).highNm ?? Infinity;
    if (below ? tooFar(targetNm - highNm) : highNm < targetNm) return;
    const parted = split(box, measure.zeroApart);
    if (isBounded(measure, box)) {
      const { least, most } = measure;
      const leastOff = off(below ? most(box.high) : least(box.low));
      if (tooFar(leastOff)) return;
      if (off(below ? least(box.low) : most(box.high)) < 0) return;
      if (leastOff >= 0 && parted !== null) {
        // The whole box lies on the wanted side, so its near corner is likely to be its best.
        tryOne(near);
        for (const rest of withoutCorner(box, below ? 'high' : 'low')) visit(rest);
        return;
      }
    }
    if (parted === null) {
      tryOne(near);
      return;
    }
    const [lower, upper] = parted;
    for (const half of below ? [upper, lower] : [lower, upper]) visit(half);
  };
  visit(wholeBox(problem));
  return best;
}

/**
 * Any piece that measures something between two ends, both included, or null
 * where there is none. Leans towards the upper end.
 * @throws SearchLimit
 */
function findBetween(problem: FitProblem, measure: Measure, fromNm: number, toNm: number): Outcome | null {
  const spend = spending(measure);
  const linear = linearBoundOf(problem, measure);
  const tryOne = (counts: readonly number[]): Outcome | null => {
    const span = measure.of(counts);
    if (span.lowNm > toNm || span.highNm < fromNm) return null;
    return evaluate(problem, { targetNm: toNm, toleranceNm: 0 }, counts, span);
  };
  const visit = (whole: Box): Outcome | null => {
    spend();
    const box = shrink(problem, whole, Infinity);
    if (box === null) return null;
    if (holdsNothing(measure, linear, box, Infinity, fromNm, toNm)) return null;
    const parted = split(box, measure.zeroApart);
    if (parted === null) return tryOne(box.low);
    const [lower, upper] = parted;
    const upperFirst = measure.guessNm(upper.low) <= toNm;
    const [first, second] = upperFirst ? [upper, lower] : [lower, upper];
    return visit(first) ?? visit(second);
  };
  return visit(wholeBox(problem));
}

/** Every question answered by boxes. */
export function boxSearch(problem: FitProblem, measure: Measure): Search {
  return {
    within: (wanted) => findWithin(problem, measure, wanted),
    nearest: (targetNm, side) => findNearest(problem, measure, { targetNm, toleranceNm: 0 }, side),
    between: (fromNm, toNm) => findBetween(problem, measure, fromNm, toNm),
  };
}
