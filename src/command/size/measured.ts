/** How well a maker measures, and when a measure is no longer explained by that. */
import type { Explained } from '#core/sizing/explain.ts';
import type { Fitted } from '#core/design/choice.ts';
import type { Strand } from '#core/design/design.ts';

/** How far a maker's measuring is off, standard deviation, mm (common practice, no source). */
export const MEASURING_SD_MM: Readonly<Record<Fitted, number>> = { length: 0.5, girth: 1.5 };

/** Measuring is further off than this many standard deviations less than once in 15,000 times. */
const EXPLAINED_SDS = 4;

/** A strand with what was measured of it and the counts that explain that, the likeliest first. */
export type StrandFound = {
  readonly strand: Strand;
  readonly mm: number;
  readonly explanations: Extract<Explained, { readonly status: 'explained' }>['explanations'];
};

/** Whether none of the counts explains the measure. */
export const isFar = (of: Fitted, { explanations }: StrandFound): boolean =>
  explanations.every(({ offMm }) => Math.abs(offMm) > EXPLAINED_SDS * MEASURING_SD_MM[of]);
