/**
 * Branch and bound over boxes of counts. Exact: a box is dropped only where
 * the measures of its corners prove that no choice in it can be the answer.
 */
import { inStock, isEven, leastCost, shrink, split, wholeBox, type Box } from './box.ts';
import type { Measure } from './measure.ts';
import {
  compareNearest,
  compareOutcomes,
  judge,
  toHundredths,
  type Outcome,
  type Span,
  type Wanted,
} from './outcome.ts';
import type { FitProblem } from './problem.ts';

/** Boxes looked at for one question. Real pieces need some hundreds; a design made to need more is refused. */
export const MOST_BOXES = 200_000;

/** The search ran into its cap: no answer is claimed. */
export class TooLarge extends Error {}

type Spend = { boxes: number };

function spend(spent: Spend): void {
  spent.boxes += 1;
  if (spent.boxes > MOST_BOXES) throw new TooLarge();
}

/** Anything that rounds to the tolerance in whole hundredths is within it. */
function halfWindowNm(wanted: Wanted): number {
  return (toHundredths(wanted.toleranceNm) + 0.5) * 10_000;
}

/** What the corners of a box measure where that bounds all of it; else null. */
function evenCorners(measure: Measure, box: Box): { readonly low: Span; readonly high: Span } | null {
  if (!isEven(box, measure.evenFrom)) return null;
  const low = measure.of(box.low);
  if (low.lowNm < measure.evenAboveNm) return null;
  return { low, high: measure.of(box.high) };
}

/** The best piece within tolerance and within a cost budget, or null. */
function bestWithin(
  problem: FitProblem,
  measure: Measure,
  wanted: Wanted,
  budget: number,
  spent: Spend,
): Outcome | null {
  const reach = halfWindowNm(wanted);
  let best: Outcome | null = null;
  const visit = (whole: Box): void => {
    spend(spent);
    const box = shrink(problem, whole, best === null ? budget : best.cost);
    if (box === null) return;
    const corners = evenCorners(measure, box);
    if (corners !== null) {
      if (corners.low.lowNm > wanted.targetNm + reach) return;
      if (corners.high.highNm < wanted.targetNm - reach) return;
    }
    const parted = split(box, measure.evenFrom);
    if (parted === null) {
      if (!inStock(problem, box.low)) return;
      const outcome = judge(problem, wanted, box.low, measure.of(box.low));
      if (outcome.excess === 0 && (best === null || compareOutcomes(problem, outcome, best) < 0))
        best = outcome;
      return;
    }
    const [lower, upper] = parted;
    if (leastCost(problem, lower) <= leastCost(problem, upper)) {
      visit(lower);
      visit(upper);
    } else {
      visit(upper);
      visit(lower);
    }
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
 * @throws TooLarge
 */
export function findWithin(problem: FitProblem, measure: Measure, wanted: Wanted): Outcome | null {
  const spent: Spend = { boxes: 0 };
  const most = dearest(problem);
  const step = problem.sections.reduce(
    (least, { cost }) => (cost > 0 ? Math.min(least, cost) : least),
    Infinity,
  );
  let budget = 0;
  for (;;) {
    const found = bestWithin(problem, measure, wanted, budget, spent);
    if (found !== null || budget >= most) return found;
    budget = Math.min(most, Math.max(budget + step, Math.ceil(budget * 1.5)));
  }
}

/**
 * The nearest piece on one side of the target: the largest not above it
 * (`below`) or the smallest not below it (`above`); null where there is none.
 * @throws TooLarge
 */
export function findNearest(
  problem: FitProblem,
  measure: Measure,
  wanted: Wanted,
  side: 'below' | 'above',
): Outcome | null {
  const spent: Spend = { boxes: 0 };
  const { targetNm } = wanted;
  let best: Outcome | null = null;
  const consider = (counts: readonly number[]): void => {
    if (!inStock(problem, counts)) return;
    const span = measure.of(counts);
    if (side === 'below' ? span.highNm > targetNm : span.lowNm < targetNm) return;
    const outcome = judge(problem, wanted, counts, span);
    if (best === null || compareNearest(problem, outcome, best) < 0) best = outcome;
  };
  /** Least error that any choice between these corners could have; null where all lie on the other side. */
  const leastError = (low: Span, high: Span): number | null => {
    if (side === 'below') {
      return low.highNm > targetNm ? null : toHundredths(Math.max(0, targetNm - high.highNm));
    }
    return high.lowNm < targetNm ? null : toHundredths(Math.max(0, low.lowNm - targetNm));
  };
  const visit = (whole: Box): void => {
    spend(spent);
    const box = shrink(problem, whole, Infinity);
    if (box === null) return;
    const corners = evenCorners(measure, box);
    if (corners !== null) {
      const error = leastError(corners.low, corners.high);
      if (error === null || (best !== null && error > best.error)) return;
      consider(side === 'below' ? box.high : box.low);
    }
    const parted = split(box, measure.evenFrom);
    if (parted === null) {
      consider(box.low);
      return;
    }
    const [lower, upper] = parted;
    for (const half of side === 'below' ? [upper, lower] : [lower, upper]) visit(half);
  };
  visit(wholeBox(problem));
  return best;
}
