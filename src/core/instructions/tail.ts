/** How far the doubled wire goes back through the beads at each end. */
import type { Component } from '../design/component.ts';
import { takes } from '../geometry/packing.ts';

/** One end bead that the tail should pass. */
export type TailBead = {
  readonly component: string;
  readonly holeMm: number;
  /** 1 is the bead next to the crimp. */
  readonly position: number;
  readonly passes: boolean;
};

export type TailCheck = {
  /** Tail wanted. */
  readonly tailMm: number;
  /** Hole that takes wire and tail together. */
  readonly needMm: number;
  /** The beads over the tail's length, from the crimp inwards. */
  readonly beads: readonly TailBead[];
  /** How many of them the tail runs through. */
  readonly passed: number;
  /** Their length: where the tail leaves the last of them it is cut flush. */
  readonly reachMm: number;
  /** The first bead in the way; null where nothing is. */
  readonly blockedBy: TailBead | null;
  /** Thickest wire that passes the bead in the way twice; null where nothing is in the way. */
  readonly fitsWireMm: number | null;
};

/**
 * Check one end for its doubled wire: `hole ≥ 2 × wire` over the tail's length.
 * @param fromCrimp the strand's components from the crimp inwards, crimp and cover left out.
 */
export function checkTail(fromCrimp: readonly Component[], wireMm: number, tailMm: number): TailCheck {
  // The circle round two equal circles is exactly twice as wide.
  const needMm = 2 * wireMm;
  const beads: TailBead[] = [];
  let passed = 0;
  let reachMm = 0;
  let blockedBy: TailBead | null = null;
  let coveredMm = 0;
  for (const [index, { id, holeMm, alongMm }] of fromCrimp.entries()) {
    if (coveredMm >= tailMm) break;
    const bead = { component: id, holeMm, position: index + 1, passes: takes(holeMm, needMm) };
    beads.push(bead);
    if (!bead.passes && blockedBy === null) blockedBy = bead;
    if (blockedBy === null) {
      passed += 1;
      reachMm += alongMm;
    }
    coveredMm += alongMm;
  }
  const fitsWireMm = blockedBy === null ? null : blockedBy.holeMm / 2;
  return { tailMm, needMm, beads, passed, reachMm, blockedBy, fitsWireMm };
}

/**
 * Both ends of one strand. On a strand too short for two tails each has its
 * half, so that no hole has to take three wires.
 * @param strung clasp to ring, crimps and covers left out.
 */
export function checkTails(
  strung: readonly Component[],
  wireMm: number,
  tailMm: number,
): { readonly clasp: TailCheck; readonly ring: TailCheck } {
  const lengthMm = strung.reduce((sum, { alongMm }) => sum + alongMm, 0);
  const eachMm = Math.min(tailMm, lengthMm / 2);
  const clasp = checkTail(strung, wireMm, eachMm);
  const ring = checkTail(strung.slice(clasp.passed).toReversed(), wireMm, eachMm);
  return { clasp, ring };
}
