/** The static pull on one end of the strand that bears most. */
import { closingMass, hangingMass, sequenceMass } from '../design/mass/pieceMass.ts';
import { figureOf } from '../body/figure.ts';
import { lieOf } from '../body/lie.ts';
import { loadOf } from '../body/load.ts';
import type { Design } from '../design/design.ts';
import type { Placed } from '../design/expand.ts';

const NEWTONS_PER_GRAM = 9.80665 / 1000;

/**
 * Pull in newtons on one end of strand `index`: a necklace as it hangs on a
 * mean neck; anything else, and a necklace too short for that neck, held up by
 * its one end, which is more than it ever bears when worn.
 */
function strandPull(design: Design, sequence: readonly Placed[], index: number): number {
  const pendantG = index === 0 ? hangingMass(design).massG : 0;
  const heldUp = (sequenceMass(sequence).massG + pendantG + closingMass(design).massG) * NEWTONS_PER_GRAM;
  if (design.kind !== 'necklace') return heldUp;
  const body = figureOf({ sex: 'unstated', neckGirthMm: null, heightMm: null });
  const lie = body.ok ? lieOf(loadOf(design, sequence, index), body.figure) : null;
  return lie === null || lie.status === 'too-short' ? heldUp : lie.pullN;
}

/** The greatest pull over the strands. */
export function pullOf(design: Design, sequences: readonly (readonly Placed[])[]): number {
  return Math.max(0, ...sequences.map((sequence, index) => strandPull(design, sequence, index)));
}
