/** The foot of the neck, where a necklace lies, from the neck girth that a buyer can measure. */
import { NECK_BASE_FROM_NECK } from './data.ts';

export const SEXES = ['female', 'male', 'unstated'] as const;
export type Sex = (typeof SEXES)[number];

/** A figure with its spread: the standard deviation of people about it. */
export type Estimate = { readonly mm: number; readonly sdMm: number };

/**
 * Neck-base girth expected for a neck girth.
 * @param neckGirthMm tape snug, square to the neck, at the bottom of the larynx.
 * @returns the mean of people with that neck, and their spread about it; soldiers, so a lower bound of the spread.
 */
export function neckBase(neckGirthMm: number, sex: Sex = 'unstated'): Estimate {
  const { intercept, slope, residualSd } = NECK_BASE_FROM_NECK[sex];
  return { mm: intercept + slope * neckGirthMm, sdMm: residualSd };
}
