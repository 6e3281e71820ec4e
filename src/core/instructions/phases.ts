/** The steps as a card lists them: a sheet a strand, on it what belongs together under one heading. */
import { phasesOfSteps, type PhaseName } from './phase.ts';
import type { Step } from './step.ts';

/** A step with its place among all steps of the card, from 0. */
export type PlacedStep = { readonly at: number; readonly step: Step };

export type Phase = { readonly name: PhaseName; readonly steps: readonly PlacedStep[] };

/** Phases of each strand; what is for the whole piece comes before the first strand's and after the last one's. */
export function phasesOf(steps: readonly Step[], strands: number): Phase[][] {
  const sheets: Phase[][] = Array.from({ length: strands }, () => []);
  const names = phasesOfSteps(steps);
  let strand = 0;
  steps.forEach((step, at) => {
    const name = names[at] ?? 'ready';
    strand = step.strand ?? strand;
    const sheet = sheets[strand];
    const last = sheet?.at(-1);
    if (last?.name === name) sheet?.splice(-1, 1, { name, steps: [...last.steps, { at, step }] });
    else sheet?.push({ name, steps: [{ at, step }] });
  });
  return sheets;
}
