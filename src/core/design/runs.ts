/** How a strand is strung: its sections as runs, clasp end to ring end. */
import type { MotifPart, Strand } from './design.ts';

/** A motif that is strung as often as its section counts. */
export type Run = {
  /** Place of its section in the strand. */
  readonly section: number;
  /** In stringing order. */
  readonly motif: readonly MotifPart[];
  readonly side: 'left' | 'centre' | 'right';
};

/**
 * Runs in stringing order. Of a mirrored strand every section but a focal
 * stands on both sides, its motif backwards on the clasp's; of a one-run strand
 * every section stands once, and `side` is `right` throughout.
 */
export function runsOf(strand: Strand): Run[] {
  const once = strand.sections.map(({ motif, role }, section): Run => ({
    section,
    motif,
    side: strand.mirrored && role === 'focal' ? 'centre' : 'right',
  }));
  if (!strand.mirrored) return once;
  const outwards = once.filter((run) => run.side === 'right');
  const mirror = outwards.map((run): Run => ({ ...run, motif: run.motif.toReversed(), side: 'left' }));
  return [...mirror.toReversed(), ...once.filter((run) => run.side === 'centre'), ...outwards];
}
