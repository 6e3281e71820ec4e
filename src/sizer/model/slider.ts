/** The slider under the measure field: whole steps of an eighth of an inch or of a millimetre. */
import { INCH_MM, type ShownUnit } from '#core/units/unit.ts';

/** An eighth of an inch; a millimetre. */
export const STEP_MM: Readonly<Record<ShownUnit, number>> = { in: INCH_MM / 8, cm: 1 };

export type SliderRange = { readonly least: number; readonly most: number; readonly value: number };

/** Steps that lie within the limits, and the step nearest to `mm` (the middle where that is null). */
export function sliderRange(
  unit: ShownUnit,
  leastMm: number,
  mostMm: number,
  mm: number | null,
): SliderRange {
  const step = STEP_MM[unit];
  const least = Math.ceil(leastMm / step - 1e-9);
  const most = Math.max(least, Math.floor(mostMm / step + 1e-9));
  const wanted = mm === null ? Math.round((least + most) / 2) : Math.round(mm / step);
  return { least, most, value: Math.min(most, Math.max(least, wanted)) };
}

/** Millimetres of a step. */
export function sliderMm(unit: ShownUnit, value: number): number {
  return value * STEP_MM[unit];
}
