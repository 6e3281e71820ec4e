/** Whether the doubled wire goes back through the beads at each end. */
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
  /** Tail wanted by the shop's rules. */
  readonly tailMm: number;
  /** Hole that takes wire and tail together. */
  readonly needMm: number;
  /** The beads over the tail's length, from the crimp inwards. */
  readonly beads: readonly TailBead[];
  /** Length of tail that goes in before the first bead in the way; up to `tailMm`. */
  readonly reachMm: number;
  /** The first bead in the way; null where the whole tail goes in. */
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
  let reachMm = 0;
  let blockedBy: TailBead | null = null;
  let coveredMm = 0;
  for (const [index, { id, holeMm, alongMm }] of fromCrimp.entries()) {
    if (coveredMm >= tailMm) break;
    const bead = { component: id, holeMm, position: index + 1, passes: takes(holeMm, needMm) };
    beads.push(bead);
    if (!bead.passes && blockedBy === null) blockedBy = bead;
    if (blockedBy === null) reachMm += alongMm;
    coveredMm += alongMm;
  }
  return {
    tailMm,
    needMm,
    beads,
    reachMm: Math.min(reachMm, tailMm),
    blockedBy,
    fitsWireMm: blockedBy === null ? null : blockedBy.holeMm / 2,
  };
}
