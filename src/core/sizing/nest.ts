/** Targets of several strands on one clasp. */
import { figureOf } from '../body/figure.ts';
import { loadOf } from '../body/load.ts';
import { nestLengths, type NestStrand } from '../body/nest.ts';
import type { Design } from '../strand/design.ts';
import { expand, type Placed } from '../strand/expand.ts';
import { finishedLengthMm } from '../strand/parts.ts';
import { usual } from './usual.ts';

/** What the strands of a piece are fitted to, each for a target of the first one. */
export type Nesting = {
  readonly targetMm: (strand: number, firstMm: number) => number;
  /** The inverse: which target of the first strand asks this of another. */
  readonly firstMm: (strand: number, targetMm: number) => number;
};

/** Rounds of the inverse. The difference of two strands hardly changes with their length, so each gains two digits or more. */
const INVERSE_ROUNDS = 8;

const SHARED: Nesting = { targetMm: (_, firstMm) => firstMm, firstMm: (_, targetMm) => targetMm };

/** Across of what lies lowest: the middle of the strand. */
function lowestAcrossMm(sequence: readonly Placed[]): number {
  return sequence[Math.floor(sequence.length / 2)]?.component.acrossMm ?? 0;
}

/** Lengths in steps of a hundredth of a millimetre are told apart; the answers are remembered. */
function remembering(of: (firstMm: number) => readonly (number | null)[]): typeof of {
  const known = new Map<number, readonly (number | null)[]>();
  return (firstMm) => {
    const key = Math.round(firstMm * 100);
    const found = known.get(key) ?? of(key / 100);
    known.set(key, found);
    return found;
  };
}

/**
 * Strands side by side share the first one's target. Of nested ones each hangs
 * below the one inside it by half their diameters and the maker's gap, and by
 * no less than in her own piece; the first in the design is the innermost.
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
  const hung = remembering((firstMm) =>
    average.ok ? nestLengths(strands, firstMm, design.nestGapMm, average.figure) : [],
  );
  const targetMm = (strand: number, firstMm: number): number => {
    if (strand === 0) return firstMm;
    const kept = firstMm + (lengths[strand] ?? 0) - (lengths[0] ?? 0);
    return Math.max(kept, hung(firstMm)[strand] ?? kept);
  };
  return {
    targetMm,
    firstMm: (strand, wantedMm) => {
      let firstMm = wantedMm;
      for (let round = 0; round < INVERSE_ROUNDS; round += 1) {
        firstMm += wantedMm - targetMm(strand, firstMm);
      }
      return firstMm;
    },
  };
}
