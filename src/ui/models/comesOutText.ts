/** How long a piece comes out, for an e-mail that is written in one unit and read in any. */
import { formatLength } from '#words/format.ts';
import type { Lang } from '#words/lang.ts';
import { strandLengthsText } from '#words/strandLengths.ts';

/** "16 in · 18 in (406 mm · 457 mm)": every strand, from the shortest on. @param lengthsMm of the strands */
export function comesOutText(lengthsMm: readonly number[], lang: Lang): string {
  const inUnit = (unit: 'in' | 'cm' | 'mm'): string =>
    strandLengthsText({ length: (mm) => formatLength(mm, unit, lang) }, lengthsMm);
  return `${inUnit(lang === 'de' ? 'cm' : 'in')} (${inUnit('mm')})`;
}
