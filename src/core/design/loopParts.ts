/** A strand closed by its clasp, as the rigid parts that its loop is made of. */
import { linkAt } from './chain.ts';
import type { Component } from './component.ts';
import type { Part } from '../geometry/part.ts';
import type { Design } from './design.ts';
import type { Placed } from './expand.ts';

/** Where the length of an extender's links isn't known, its part of the loop bends every this many mm (a usual link, common practice, no source). */
const CHAIN_LINK_MM = 3;
/** Across of a chain link (common practice, no source). It barely moves the loop. */
const CHAIN_ACROSS_MM = 2;
/** Links of an extender that are told apart. More would change nothing. */
const MOST_LINKS = 100;

export function partOf(component: Component): Part {
  const { alongMm, acrossMm, roundingMm } = component;
  return { alongMm, acrossMm, roundingMm };
}

/**
 * One wire loop, crimp to bearing point: the wire lies double in it, so it is
 * two wires (or two guards) across, and rounded as wire is.
 */
export function wireLoopPart(design: Design): Part {
  const { loopMm, guard } = design.ends;
  const guardMm = guard === null ? 0 : (design.components[guard]?.acrossMm ?? 0);
  const acrossMm = 2 * Math.max(design.wire.diameterMm, guardMm);
  return { alongMm: loopMm, acrossMm, roundingMm: Math.min(loopMm, acrossMm) / 2 };
}

/** One link of an extender chain that takes this length of it. */
export function linkPart(alongMm: number): Part {
  return { alongMm, acrossMm: CHAIN_ACROSS_MM, roundingMm: Math.min(alongMm, CHAIN_ACROSS_MM) / 2 };
}

/** The used part of an extender chain: whole links or, where their length isn't known, links that share it evenly. */
export function chainParts({ ends }: Design, chainMm: number): Part[] {
  if (!(chainMm > 0)) return [];
  const evenly = Math.min(MOST_LINKS, Math.ceil(ends.extenderMm / CHAIN_LINK_MM));
  const links = Math.max(1, linkAt(ends, chainMm) ?? evenly);
  return Array.from({ length: links }, () => linkPart(chainMm / links));
}

/** What stands beyond the ring end's crimp: wire loop, ring. */
export function ringEndParts(design: Design): Part[] {
  const ring = design.ends.ring === null ? undefined : design.components[design.ends.ring];
  return [wireLoopPart(design), ...(ring === undefined ? [] : [partOf(ring)])];
}

/** What stands beyond the clasp end's crimp, from the far end: clasp, wire loop. */
export function claspEndParts(design: Design): Part[] {
  const clasp = design.components[design.ends.clasp];
  return [...(clasp === undefined ? [] : [partOf(clasp)]), wireLoopPart(design)];
}

/**
 * What closes a strand, in the order of the loop after its ring end's crimp:
 * wire loop, ring, extender chain as far as it is used, clasp, wire loop.
 */
export function closingParts(design: Design, chainMm: number): Part[] {
  return [...ringEndParts(design), ...chainParts(design, chainMm), ...claspEndParts(design)];
}

/**
 * The whole loop of one strand: what is strung, clasp end first, then what
 * closes it. `chainMm` is how much of the extender is used, 0 for none.
 */
export function loopParts(design: Design, sequence: readonly Placed[], chainMm = 0): Part[] {
  const strung = sequence
    .filter((placed) => placed.covered !== true)
    .map((placed) => partOf(placed.component));
  return [...strung, ...closingParts(design, chainMm)];
}

/**
 * Finished length in mm: the closed strand laid straight, from bearing point
 * to bearing point through clasp and ring.
 */
export function finishedLengthMm(design: Design, sequence: readonly Placed[], chainMm = 0): number {
  return loopParts(design, sequence, chainMm).reduce((sum, part) => sum + part.alongMm, 0);
}
