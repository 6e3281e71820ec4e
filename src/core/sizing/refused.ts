/** What is given in place of an answer where there is none. */
import { TooLarge } from '../solver/tooLarge.ts';
import type { Refused, SizingProblem } from './sizing.ts';

export function refuse(problem: SizingProblem): Refused {
  return { status: 'refused', problem };
}

/** The answer, or a refusal where a search for it ran into its cap. */
export function unlessTooLarge<Answer>(answer: () => Answer): Answer | Refused {
  try {
    return answer();
  } catch (error) {
    if (!(error instanceof TooLarge)) throw error;
    return refuse({ code: 'search-limit' });
  }
}
