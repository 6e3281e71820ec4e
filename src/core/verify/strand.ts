/** One strand against what it is fitted to, measured by the verifier's own code. */
import type { Fitted } from '../design/choice.ts';
import type { Design } from '../design/design.ts';
import { lengthOf } from './candidate.ts';
import { girthByRelaxing } from './girth.ts';
import { strung, verifierParts } from './parts.ts';

/** What a strand measures closed with so much of its chain let out, mm. */
export function measured(
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

/**
 * How far what closes in whole links is off where it comes nearest, mm: the link
 * before and the link after the target are found by halving, since every link
 * more makes the piece larger.
 * @param measuredMm what it measures with so much of the chain let out
 */
export function nearestLinkOffMm(
  { extenderMm, linkMm }: { readonly extenderMm: number; readonly linkMm: number },
  measuredMm: (chainMm: number) => number,
  targetMm: number,
): number {
  let [before, after] = [0, Math.round(extenderMm / linkMm)];
  while (after - before > 1) {
    const middle = Math.floor((before + after) / 2);
    if (measuredMm(middle * linkMm) < targetMm) before = middle;
    else after = middle;
  }
  const [below, above] = [before, after].map((link) => measuredMm(link * linkMm) - targetMm);
  return Math.abs(below!) <= Math.abs(above!) ? below! : above!;
}

/** How far a strand is from its target, mm: below 0 where too small, 0 where a chain of unknown links reaches it. */
export function offMm(
  design: Design,
  index: number,
  counts: readonly number[],
  fitted: Fitted,
  targetMm: number,
): number {
  const [leastMm, mostMm] = spanMm(design, index, counts, fitted);
  if (targetMm <= leastMm) return leastMm - targetMm;
  if (targetMm >= mostMm) return mostMm - targetMm;
  const { extenderMm, linkMm } = design.ends;
  if (linkMm === undefined) return 0;
  return nearestLinkOffMm(
    { extenderMm, linkMm },
    (chainMm) => measured(design, index, counts, fitted, chainMm),
    targetMm,
  );
}

/** The one furthest from 0. */
export const worstOf = (offs: readonly number[]): number =>
  offs.reduce((worst, off) => (Math.abs(off) > Math.abs(worst) ? off : worst), 0);
