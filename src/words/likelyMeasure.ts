/** Measures to show by example how one is written: a half is added to each. */
import type { Measure } from '#core/design/choice.ts';

/** Whole inches and whole centimetres about what such a measure mostly is (common practice, no source). */
export const LIKELY: Readonly<Record<Measure['of'], { readonly inches: number; readonly cm: number }>> = {
  wrist: { inches: 6, cm: 16 },
  ankle: { inches: 9, cm: 23 },
  neck: { inches: 13, cm: 34 },
  length: { inches: 17, cm: 45 },
};
