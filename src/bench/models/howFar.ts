/** How far a publishing is, in the maker's words. */
import type { Progress } from '#release/progress.ts';
import type { PublishWords } from '#words/words.ts';

export type HowFar = {
  readonly step: string;
  /** Pieces done, of all; empty where none are counted yet. */
  readonly count: string;
  /** From 0 to 1. */
  readonly share: number;
};

/** Where the bar stands when a step begins; pieces fill the part between pages and search. */
const BEGINS = { reading: 0.02, program: 0.05, pages: 0.15, search: 0.85, putting: 0.95 } as const;

export function howFar(
  { step, pieces }: Progress & { readonly state: 'running' },
  words: PublishWords,
): HowFar {
  const share = BEGINS[step];
  if (pieces === null || pieces.of === 0) return { step: words.steps[step], count: '', share };
  const within = (pieces.done / pieces.of) * (BEGINS.search - share);
  return { step: words.steps[step], count: words.progress(pieces.done, pieces.of), share: share + within };
}
