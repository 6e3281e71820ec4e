/** The trade's names of necklace lengths. */
import { INCH_MM } from '#core/units/unit.ts';
import type { LengthName } from '#words/en/body.ts';

/** Whole inches of each name: common practice, no source. Between some of them lies a length without a name. */
const NAMED: readonly (readonly [LengthName, number, number])[] = [
  ['collar', 12, 13],
  ['choker', 14, 16],
  ['princess', 17, 19],
  ['matinee', 20, 24],
  ['opera', 28, 34],
  ['rope', 36, Infinity],
];

/** The name of a finished length, rounded to whole inches; null where the trade has none. */
export function lengthName(lengthMm: number): LengthName | null {
  const inches = Math.round(lengthMm / INCH_MM);
  return NAMED.find(([, least, most]) => inches >= least && inches <= most)?.[0] ?? null;
}
