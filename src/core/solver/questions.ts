/** The questions that a fit asks of a strand. */
import type { Outcome, Wanted } from './outcome.ts';

/** All answers are exact; each may throw `SearchLimit` instead of giving one. */
export type Search = {
  /** The best piece within tolerance by the order of preference, or null where there is none. */
  readonly within: (wanted: Wanted) => Outcome | null;
  /** The largest piece not above a target, or the smallest not below it; of alike ones the preferred. */
  readonly nearest: (targetNm: number, side: 'below' | 'above') => Outcome | null;
  /** Any piece that measures something between two ends, both included; a large one sooner than a small one. */
  readonly between: (fromNm: number, toNm: number) => Outcome | null;
};
