/** What belongs together at the bench: made ready, the first end, the beads, the second end, what is left when all is closed. */
import type { Step } from './step.ts';

export type PhaseName = 'ready' | 'first' | 'beads' | 'second' | 'done';

/** The phase that a step begins; null where it goes on with the one before. */
function begins({ code, args }: Step): PhaseName | null {
  switch (code) {
    case 'cut-wire':
      return 'first';
    case 'string-beads':
    case 'hang-pendant':
      return 'beads';
    case 'thread-end':
      return args.end === 'ring' ? 'second' : null;
    case 'check-closed':
      return 'done';
    default:
      return null;
  }
}

/** The phase of each step of a card, in turn. */
export function phasesOfSteps(steps: readonly Step[]): PhaseName[] {
  let phase: PhaseName = 'ready';
  return steps.map((step) => {
    phase = begins(step) ?? phase;
    return phase;
  });
}
