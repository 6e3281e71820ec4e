/** Fits one strand: the best piece within tolerance, or the nearest ones, or the limit that is in the way. */
import type { Measure } from './measure.ts';
import { compareOutcomes, type Outcome, type Wanted } from './outcome.ts';
import type { FitProblem } from './problem.ts';
import { findNearest, findWithin } from './search.ts';

/** The smallest and the largest piece that this strand can be. */
export type StrandLimits = { readonly least: Outcome; readonly most: Outcome };

export type StrandFit =
  | { readonly status: 'fits'; readonly best: Outcome }
  | {
      readonly status: 'near';
      readonly best: Outcome;
      readonly below: Outcome | null;
      readonly above: Outcome | null;
    }
  | { readonly status: 'outside'; readonly side: 'below' | 'above'; readonly nearest: Outcome };

/** Beyond any strand, nm: a hundred kilometres. */
const FAR_NM = 1e14;

/**
 * Limits of a strand; null where the stock doesn't reach for any piece.
 * @throws TooLarge
 */
export function strandLimits(problem: FitProblem, measure: Measure): StrandLimits | null {
  const least = findNearest(problem, measure, { targetNm: 0, toleranceNm: 0 }, 'above');
  const most = findNearest(problem, measure, { targetNm: FAR_NM, toleranceNm: 0 }, 'below');
  return least === null || most === null ? null : { least, most };
}

/**
 * The optimum by the order of preference.
 * @throws TooLarge
 */
export function fitStrand(
  problem: FitProblem,
  measure: Measure,
  wanted: Wanted,
  limits: StrandLimits,
): StrandFit {
  const best = findWithin(problem, measure, wanted);
  if (best !== null) return { status: 'fits', best };
  if (wanted.targetNm < limits.least.span.lowNm) {
    return { status: 'outside', side: 'below', nearest: limits.least };
  }
  if (wanted.targetNm > limits.most.span.highNm) {
    return { status: 'outside', side: 'above', nearest: limits.most };
  }
  const below = findNearest(problem, measure, wanted, 'below');
  const above = findNearest(problem, measure, wanted, 'above');
  const nearest = [below, above].filter((outcome) => outcome !== null);
  const [first, second] = nearest;
  if (first === undefined) return { status: 'outside', side: 'below', nearest: limits.least };
  const best2 = second !== undefined && compareOutcomes(problem, second, first) < 0 ? second : first;
  return { status: 'near', best: best2, below, above };
}
