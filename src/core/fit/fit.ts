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
export function strandLimits(search: Search): StrandLimits | null {
  const least = search.nearest(0, 'above');
  const most = search.nearest(FAR_NM, 'below');
  return least === null || most === null ? null : { least, most };
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
  const best = search.within(wanted);
  if (best !== null) return { status: 'fits', best };
  if (wanted.targetNm < limits.least.span.lowNm) {
    return { status: 'outside', side: 'below', nearest: limits.least };
  }
  if (wanted.targetNm > limits.most.span.highNm) {
    return { status: 'outside', side: 'above', nearest: limits.most };
  }
  const nearest = (side: 'below' | 'above'): Outcome | null => {
    const found = search.nearest(wanted.targetNm, side);
    return found && judge(problem, wanted, found.counts, found.span);
  };
  const below = nearest('below');
  const above = nearest('above');
  const [first, second] = [below, above].filter((outcome) => outcome !== null);
  if (first === undefined) return { status: 'outside', side: 'below', nearest: limits.least };
  const preferred = second !== undefined && compareOutcomes(problem, second, first) < 0 ? second : first;
  return { status: 'near', best: preferred, below, above };
}
