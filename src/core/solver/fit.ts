/** Fits one strand: the best piece within tolerance, or the nearest ones, or the limit that is in the way. */
import { compareOutcomes, judge, type Outcome, type Wanted } from './outcome.ts';
import type { FitProblem } from './problem.ts';
import type { Search } from './questions.ts';

/** The smallest and the largest piece that this strand can be. */
export type StrandLimits = { readonly least: Outcome; readonly most: Outcome };

export type StrandFit =
  | { readonly status: 'fits'; readonly best: Outcome }
  | {
      readonly status: 'near';
      readonly best: Outcome;
      readonly below: Outcome;
      readonly above: Outcome;
    }
  | { readonly status: 'outside'; readonly side: 'below' | 'above'; readonly nearest: Outcome };

/** Beyond any strand, nm: a hundred kilometres. */
const FAR_NM = 1e14;

/**
 * Limits of a strand; null where the stock doesn't reach for any piece.
 * @throws TooLarge
 */
export function strandLimits(search: Search): StrandLimits | null {
  const least = search.nearest(0, 'above');
  if (least === null) return null;
  // Where there is a smallest piece there is a largest.
  return { least, most: search.nearest(FAR_NM, 'below')! };
}

/**
 * The optimum by the order of preference.
 * @throws TooLarge
 */
export function fitStrand(
  problem: FitProblem,
  search: Search,
  wanted: Wanted,
  limits: StrandLimits,
): StrandFit {
  const fitting = search.within(wanted);
  if (fitting !== null) return { status: 'fits', best: fitting };
  if (wanted.targetNm < limits.least.span.lowNm) {
    return { status: 'outside', side: 'below', nearest: limits.least };
  }
  if (wanted.targetNm > limits.most.span.highNm) {
    return { status: 'outside', side: 'above', nearest: limits.most };
  }
  // The smallest piece meets nothing here, so all of it lies below the target, and all of the largest above.
  const nearest = (side: 'below' | 'above'): Outcome => {
    const { counts, span } = search.nearest(wanted.targetNm, side)!;
    return judge(problem, wanted, counts, span);
  };
  const below = nearest('below');
  const above = nearest('above');
  const best = compareOutcomes(problem, above, below) < 0 ? above : below;
  return { status: 'near', best, below, above };
}
