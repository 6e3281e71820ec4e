/** How long a piece takes to make, by the shop's rule. */
import { tallyStrand } from '../../design/tally.ts';
import type { Rules } from '../../design/rules.ts';
import type { Counts, Design } from '../../design/design.ts';

/** Components strung on all strands; crimps and other findings not among them. */
export function strungCount(design: Design, counts: Counts): number {
  return design.strands.reduce((sum, strand, index) => {
    const tally = tallyStrand(strand, counts[index] ?? []);
    return sum + [...tally.values()].reduce((all, count) => all + count, 0);
  }, 0);
}

/** Minutes for a piece with these counts: the piece, its strands, two ends a strand, and every bead. */
export function minutesOf(design: Design, counts: Counts, rules: Rules): number {
  const { perPiece, perStrand, perEnd, perBead } = rules.minutes;
  const strands = design.strands.length;
  return perPiece + strands * (perStrand + 2 * perEnd) + strungCount(design, counts) * perBead;
}
