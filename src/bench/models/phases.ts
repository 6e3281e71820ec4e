/** The steps as a card lists them: a sheet a strand, on it what belongs together under one heading. */
import type { Step } from '#core/instructions/step.ts';

/** Made ready, the first end, the beads, the second end, what is left when all is closed. */
export type PhaseName = 'ready' | 'first' | 'beads' | 'second' | 'done';

/** A step with its place among all steps of the card, from 0. */
export type PlacedStep = { readonly at: number; readonly step: Step };

export type Phase = { readonly name: PhaseName; readonly steps: readonly PlacedStep[] };

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

/** Phases of each strand; what is for the whole piece comes before the first strand's and after the last one's. */
export function phasesOf(steps: readonly Step[], strands: number): Phase[][] {
  const sheets: Phase[][] = Array.from({ length: strands }, () => []);
  let name: PhaseName = 'ready';
  let strand = 0;
  steps.forEach((step, at) => {
    name = begins(step) ?? name;
    strand = step.strand ?? strand;
    const sheet = sheets[strand];
    const last = sheet?.at(-1);
    if (last?.name === name) sheet?.splice(-1, 1, { name, steps: [...last.steps, { at, step }] });
    else sheet?.push({ name, steps: [{ at, step }] });
  });
  return sheets;
}
