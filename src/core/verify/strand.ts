/** One strand against what it is fitted to, measured by the verifier's own code. */
import type { Fitted } from '../design/choice.ts';
import type { Design } from '../design/design.ts';
import { lengthOf } from './candidate.ts';
import { girthByRelaxing } from './girth.ts';
import { strung, verifierParts } from './parts.ts';

function measured(
  design: Design,
  index: number,
  counts: readonly number[],
  fitted: Fitted,
  chainMm: number,
): number {
  const strand = design.strands[index]!;
  return fitted === 'length'
    ? lengthOf(design, strung(strand, counts), chainMm)
    : girthByRelaxing(verifierParts(design, strand, counts, chainMm));
}

/** What a strand measures with its chain taken in and let out, mm. */
export function spanMm(
  design: Design,
  index: number,
  counts: readonly number[],
  fitted: Fitted,
): readonly [leastMm: number, mostMm: number] {
  const leastMm = measured(design, index, counts, fitted, 0);
  // On several strands the chain is the wearer's: let out, it would lengthen all of them alike.
  const extenderMm = design.strands.length === 1 ? design.ends.extenderMm : 0;
  return [leastMm, extenderMm > 0 ? measured(design, index, counts, fitted, extenderMm) : leastMm];
}

/** How far a strand is from its target, mm: below 0 where too small, 0 where the chain reaches it. */
export function offMm(
  design: Design,
  index: number,
  counts: readonly number[],
  fitted: Fitted,
  targetMm: number,
): number {
  const [leastMm, mostMm] = spanMm(design, index, counts, fitted);
  if (targetMm < leastMm) return leastMm - targetMm;
  return Math.min(0, mostMm - targetMm);
}

/** The one furthest from 0. */
export const worstOf = (offs: readonly number[]): number =>
  offs.reduce((worst, off) => (Math.abs(off) > Math.abs(worst) ? off : worst), 0);
