/** Who will wear it, as far as is known. */
import type { Sex } from './neckBase.ts';

export type Adult = {
  readonly sex: Sex;
  /** Tape snug and not tight, at the bottom of the larynx; null where not known. */
  readonly neckGirthMm: number | null;
  readonly heightMm: number | null;
};

/** A child by age, from two years on. There is no default for a baby, on purpose. */
export type Child = { readonly ageYears: number; readonly neckGirthMm: number | null };

export type Wearer = Adult | Child;

export const isChild = (wearer: Wearer): wearer is Child => 'ageYears' in wearer;
