/** The tails of a whole piece, as problems of its design. */
import type { DesignProblem } from '../sizing/sizing.ts';
import type { Counts, Design } from '../strand/design.ts';
import { expand } from '../strand/expand.ts';
import type { Placed } from '../strand/expand.ts';
import { checkTail } from './tail.ts';
import type { TailCheck } from './tail.ts';

/** What is strung between the crimps. */
const beadsOf = (sequence: readonly Placed[]) =>
  sequence.filter(({ section }) => section !== 'end').map(({ component }) => component);

function problemOf(check: TailCheck, strand: number, end: 'clasp' | 'ring'): DesignProblem[] {
  if (check.blockedBy === null) return [];
  const { component, holeMm, position } = check.blockedBy;
  const { needMm, tailMm, reachMm, fitsWireMm } = check;
  const args = { component, holeMm, needMm, position, end, tailMm, reachMm, fitsWireMm: fitsWireMm ?? 0 };
  return [{ code: 'tail-blocked', at: `strands.${strand}`, args }];
}

/**
 * Beads that don't take the doubled wire at either end, with these counts.
 * @param tailMm length of the doubled wire, from the shop's rules.
 */
export function checkTails(design: Design, counts: Counts, tailMm: number): DesignProblem[] {
  const wireMm = design.wire.diameterMm;
  return expand(design, counts).flatMap((sequence, strand) => {
    const beads = beadsOf(sequence);
    return [
      ...problemOf(checkTail(beads, wireMm, tailMm), strand, 'clasp'),
      ...problemOf(checkTail(beads.toReversed(), wireMm, tailMm), strand, 'ring'),
    ];
  });
}
