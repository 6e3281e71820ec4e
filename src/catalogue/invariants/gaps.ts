/** Sizes that are often asked for and that the piece doesn't come out at, with what would close each gap. */
import type { Design } from '#core/design/design.ts';
import type { Rules } from '#core/design/rules.ts';
import { gapsOf, missedSizes, type Closing } from '#core/sizing/gaps/gaps.ts';
import type { GapClosing } from '#words/catalogueCodes.ts';
import type { Entry } from '../read/entry.ts';
import type { Problem } from '../read/problem.ts';
import type { AuthoredPiece } from '../schemas/piece.ts';

/** A remedy with what the maker calls its section, and the figure she would write. */
function told({ sizesMm, remedy }: Closing, design: Design): GapClosing {
  if (remedy === null) return { sizesMm, how: { code: 'nothing' }, name: '' };
  if (remedy.code !== 'widen-section') return { sizesMm, how: remedy, name: '' };
  const { strand, section, repeats } = remedy;
  const { name, fewest, most } = design.strands[strand]!.sections.find(({ id }) => id === section)!;
  const to = (repeats > 0 ? most : fewest) + repeats;
  return { sizesMm, how: { code: 'widen-section', repeats, to }, name };
}

/**
 * A remark on each piece that can still be had and has gaps, unless its maker
 * says why; and on a reason without a gap. Takes a moment for each gap, so it
 * is asked for by name.
 */
export function noteGaps(entry: Entry<AuthoredPiece>, design: Design, rules: Rules): Problem[] {
  const { status, gaps: reason } = entry.value;
  if (status === 'past') return [];
  if (reason !== undefined) {
    const none = missedSizes(design, rules).length === 0;
    return none ? [entry.problemAt(['gaps'], { code: 'gaps-none' })] : [];
  }
  const { of, missedMm, closings } = gapsOf(design, rules);
  if (missedMm.length === 0) return [];
  return [
    entry.problemAt([], {
      code: 'gaps',
      of,
      sizesMm: missedMm,
      closings: closings.map((one) => told(one, design)),
    }),
  ];
}
