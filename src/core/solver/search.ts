/** Who answers the questions that a fit asks of a strand. */
import { boxSearch } from './boxSearch.ts';
import { lengthSearch } from './lengthSearch.ts';
import type { Measure } from './measure.ts';
import type { FitProblem } from './problem.ts';
import type { Search } from './questions.ts';

/** Sums have a search of their own; everything else is searched by boxes. */
export function searchOf(problem: FitProblem, measure: Measure): Search {
  return measure.eachNm === null
    ? boxSearch(problem, measure)
    : lengthSearch(problem, measure, measure.eachNm);
}
