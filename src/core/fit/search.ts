/** The questions that a fit asks of a strand, and who answers them. */
import { boxSearch } from './boxSearch.ts';
import { lengthSearch } from './lengthSearch.ts';
import type { Measure } from './measure.ts';
import type { Outcome, Wanted } from './outcome.ts';
import type { FitProblem } from './problem.ts';

/** All answers are exact; each may throw `TooLarge` instead of giving one. */
export type Search = {
  /** The best piece within tolerance by the order of preference, or null where there is none. */
  readonly within: (wanted: Wanted) => Outcome | null;
  /** The largest piece not above a target, or the smallest not below it; of alike ones the preferred. */
  readonly nearest: (targetNm: number, side: 'below' | 'above') => Outcome | null;
  /** Any piece that measures something between two ends, both included, the larger the better. */
  readonly between: (fromNm: number, toNm: number) => Outcome | null;
};

/** Sums have a search of their own; everything else is searched by boxes. */
export function searchOf(problem: FitProblem, measure: Measure): Search {
  return measure.eachNm === null
    ? boxSearch(problem, measure)
    : lengthSearch(problem, measure, measure.eachNm);
}
