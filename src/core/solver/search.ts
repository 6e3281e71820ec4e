/** Who answers the questions that a fit asks of a strand. */
import { boxSearch } from './boxSearch.ts';
import { fewChanges } from './fewChanges.ts';
import type { Measure } from './measure.ts';
import type { FitProblem } from './problem.ts';
import type { Search } from './questions.ts';

/**
 * Branch and bound answers every question. Of a plain sum the best piece mostly
 * changes little, and then iterative deepening finds it with far less effort
 * (`npm run benchmark` shows both); where it gives up, branch and bound goes on.
 */
export function searchOf(problem: FitProblem, measure: Measure): Search {
  const boxes = boxSearch(problem, measure);
  const { eachNm } = measure;
  if (eachNm === null) return boxes;
  return {
    ...boxes,
    within: (wanted) => {
      const found = fewChanges(problem, eachNm, measure.of, wanted);
      if (found === 'none') return null;
      return found === 'given-up' ? boxes.within(wanted) : found;
    },
  };
}
