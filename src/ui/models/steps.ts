/** The round sizes that a table names between two limits. */
import type { Lang } from '#words/lang.ts';
import type { PieceKind } from '#core/design/design.ts';
import { INCH_MM } from '#core/units/unit.ts';

/** More rows than this are not read; the step doubles until they fit. */
const MOST_ROWS = 12;

/** Step of the table in mm: what a shop of that country would have on its list (common practice, no source). */
const STEPS: Readonly<Record<Lang, Readonly<Record<PieceKind, number>>>> = {
  en: {
    necklace: INCH_MM,
    collar: INCH_MM / 2,
    bracelet: INCH_MM / 4,
    anklet: INCH_MM / 4,
  },
  de: { necklace: 20, collar: 10, bracelet: 5, anklet: 5 },
};

/**
 * Multiples of the step from `leastMm` to `mostMm`, both included.
 * @returns at most 12, ascending; empty where none lies between
 */
export function roundSizes(kind: PieceKind, leastMm: number, mostMm: number, lang: Lang): number[] {
  let step = STEPS[lang][kind];
  while ((mostMm - leastMm) / step >= MOST_ROWS) step *= 2;
  const first = Math.ceil(leastMm / step - 1e-9);
  const last = Math.floor(mostMm / step + 1e-9);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => (first + index) * step);
}
