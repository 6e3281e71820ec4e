/** When a measure is no longer explained by how well a maker measures. */
import type { Explained } from '#core/sizing/explain.ts';
import type { Fitted } from '#core/design/choice.ts';
import { MEASURING_SD_MM } from '#core/sizing/measuring.ts';
import type { Strand } from '#core/design/design.ts';

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
