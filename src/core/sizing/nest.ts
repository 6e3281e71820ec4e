/** Targets of several strands on one clasp. */
import { figureOf } from '../body/figure.ts';
import { loadOf } from '../body/load.ts';
import { nestLengths, type NestStrand } from '../body/nest.ts';
import { root } from '../geometry/root.ts';
import type { Design } from '../design/design.ts';
import { expand, type Placed } from '../design/expand.ts';
import { finishedLengthMm } from '../design/loopParts.ts';
import { usual } from './usual.ts';

/** What the strands of a piece are fitted to, each for a target of the first one. */
export type Nesting = {
  readonly targetMm: (strand: number, firstMm: number) => number;
  /** The inverse: which target of the first strand asks this of another. */
  readonly firstMm: (strand: number, targetMm: number) => number;
};

const SHARED: Nesting = { targetMm: (_, firstMm) => firstMm, firstMm: (_, targetMm) => targetMm };

/** Across of what lies lowest: the middle of the strand. */
function lowestAcrossMm(sequence: readonly Placed[]): number {
  return sequence[Math.floor(sequence.length / 2)]!.component.acrossMm;
}

type Lengths = readonly (number | null)[];

/**
 * Lengths for every hundredth of a millimetre of the first strand's, which are
 * remembered, and in proportion between two: so they rise with it, and can be
 * gone back from.
 */
function everyHundredth(
  of: (firstMm: number) => Lengths,
): (firstMm: number, strand: number) => number | null {
  const known = new Map<number, Lengths>();
  const at = (key: number): Lengths => {
    const found = known.get(key) ?? of(key / 100);
    known.set(key, found);
    return found;
  };
  return (firstMm, strand) => {
    const key = Math.floor(firstMm * 100);
    const share = firstMm * 100 - key;
    const low = at(key)[strand] ?? null;
    if (low === null || share === 0) return low;
    // Where a strand reaches round, a longer one does.
    return low + share * (at(key + 1)[strand]! - low);
  };
}

/**
 * Strands side by side share the first one's target. Of nested ones each hangs
 * below the one inside it by half their diameters and the maker's gap, and by
 * no less than in her own piece; the first in the design is the innermost.
 *
 * Where the first is too short for a neck there is nothing to hang below, and
 * the others are as far apart as she has them; so their lengths jump where it
 * is just long enough.
 *
 * They are laid on the average figure, whoever wears the piece: the difference
 * of two lengths hardly hangs on the neck, and the sizes on a page must not
 * change with the buyer's.
 */
export function nestingOf(design: Design): Nesting {
  if (design.lie !== 'nested' || design.strands.length < 2) return SHARED;
  const sequences = expand(design, usual(design));
  const lengths = sequences.map((sequence) => finishedLengthMm(design, sequence));
  const strands = sequences.map((sequence, index): NestStrand => ({
    load: loadOf(design, sequence, index),
    lowestAcrossMm: lowestAcrossMm(sequence),
  }));
  const average = figureOf({ sex: 'unstated', neckGirthMm: null, heightMm: null });
  const hung = everyHundredth((firstMm) =>
    average.ok ? nestLengths(strands, firstMm, design.nestGapMm, average.figure) : [],
  );
  const keptMm = (strand: number): number => lengths[strand]! - lengths[0]!;
  const targetMm = (strand: number, firstMm: number): number => {
    if (strand === 0) return firstMm;
    const kept = firstMm + keptMm(strand);
    return Math.max(kept, hung(firstMm, strand) ?? kept);
  };
  return {
    targetMm,
    firstMm: (strand, wantedMm) => {
      const beyond = (firstMm: number): number => targetMm(strand, firstMm) - wantedMm;
      // None is less apart than she has them, so the first is no longer than this.
      const mostMm = wantedMm - keptMm(strand);
      if (beyond(mostMm) <= 0) return mostMm;
      let widthMm = 50;
      while (beyond(mostMm - widthMm) > 0) widthMm *= 2;
      return root(beyond, mostMm - widthMm, mostMm);
    },
  };
}
