/** Where a pendant hangs on the strand that bears it. */
import type { Placed } from './expand.ts';

export type PendantGap = {
  /** Components strung before it. */
  readonly after: number;
  /** Its neighbours on the wire; null where it would hang at an end. */
  readonly left: Placed | null;
  readonly right: Placed | null;
  /** From the middle of what is strung to the gap, above 0 towards the ring end; 0, or the half of a bead in the way. */
  readonly offMiddleMm: number;
};

/** Gaps as near to the middle as this are both the nearest; the first is taken. */
const SAME_MM = 1e-9;
/** Rounding noise of a middle that is one. */
const NOISE_MM = 1e-6;

/** The gap between two components nearest the middle of a strand, as `expand` gives it; the first of two as near. */
export function pendantGap(sequence: readonly Placed[]): PendantGap {
  const strung = sequence.filter(({ section }) => section !== 'end');
  const middleMm = strung.reduce((sum, { component }) => sum + component.alongMm, 0) / 2;
  let best: PendantGap = { after: strung.length, left: null, right: null, offMiddleMm: 0 };
  let atMm = 0;
  strung.forEach((left, index) => {
    atMm += left.component.alongMm;
    const right = strung[index + 1];
    const offMm = atMm - middleMm;
    const isNearer = best.right === null || Math.abs(offMm) < Math.abs(best.offMiddleMm) - SAME_MM;
    if (right !== undefined && isNearer) best = { after: index + 1, left, right, offMiddleMm: offMm };
  });
  return Math.abs(best.offMiddleMm) < NOISE_MM ? { ...best, offMiddleMm: 0 } : best;
}
