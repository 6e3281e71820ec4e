/** What is given in place of an answer where there is none. */
import { SearchLimit } from '../solver/searchLimit.ts';
import type { Refused, SizingProblem } from './sizing.ts';

export function refuse(problem: SizingProblem): Refused {
  return { status: 'refused', problem };
}

/** The answer, or a refusal where a search for it ran into its cap. */
export function unlessSearchLimit<Answer>(answer: () => Answer): Answer | Refused {
  try {
    return answer();
  } catch (error) {
    if (!(error instanceof SearchLimit)) throw error;
    return refuse({ code: 'search-limit' });
  }
}
