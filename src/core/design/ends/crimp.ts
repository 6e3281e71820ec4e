/** Which crimp grips the wires, and which cover closes over it. */
import type { Component } from '../component.ts';
import { holeForWiresMm, takes } from '../../geometry/packing.ts';

/** The wire goes through the crimp, round its loop, and back through. */
export const WIRES_IN_CRIMP = 2;

/** What is asked of a crimp. */
type Crimp = Pick<Component, 'id' | 'holeMm' | 'closedMm'>;

export type CrimpFit = {
  readonly crimp: string;
  readonly wires: number;
  readonly insideMm: number;
  /** Smallest inside that takes the wires; null where there are too many for the table. */
  readonly needMm: number | null;
  /** `tight`: the wires don't go in. `loose`: more room than the shop's play, so it may not grip. */
  readonly fit: 'fits' | 'tight' | 'loose';
};

/** How one crimp takes `wires` wires. `playMm`: room beyond the wires' circle that the shop accepts. */
export function crimpFit(crimp: Crimp, wires: number, wireMm: number, playMm: number): CrimpFit {
  const needMm = holeForWiresMm(wires, wireMm);
  const found = { crimp: crimp.id, wires, insideMm: crimp.holeMm, needMm };
  if (needMm === null || !takes(crimp.holeMm, needMm)) return { ...found, fit: 'tight' };
  return { ...found, fit: takes(needMm + playMm, crimp.holeMm) ? 'fits' : 'loose' };
}

/** Smallest first; equal ones by id, so that the choice hangs on nothing else. */
function bySize(measure: (component: Component) => number) {
  return (one: Component, other: Component) => measure(one) - measure(other) || (one.id < other.id ? -1 : 1);
}

/**
 * The smallest crimp that takes the wires: the less play, the surer the grip.
 * @returns null where none takes them; its `fit` says whether it is within the shop's play.
 */
export function chooseCrimp(
  crimps: readonly Component[],
  wires: number,
  wireMm: number,
  playMm: number,
): CrimpFit | null {
  const fits = [...crimps]
    .sort(bySize((crimp) => crimp.holeMm))
    .map((crimp) => crimpFit(crimp, wires, wireMm, playMm));
  return fits.find((fit) => fit.fit !== 'tight') ?? null;
}

export type CoverFit = {
  readonly cover: string;
  /** Closed crimp that the cover is made for, and the one that stands there. */
  readonly takesMm: number;
  readonly closedMm: number;
  readonly fit: 'fits' | 'tight' | 'loose';
};

/**
 * A cover closes into a ball only over a crimp near its size: room beyond this
 * and it rattles or closes askew (common practice, no source).
 */
export const COVER_PLAY_MM = 0.8;

/** How a cover takes a closed crimp; null where either measure isn't stated. */
export function coverFit(cover: Component, crimp: Crimp): CoverFit | null {
  if (cover.closedMm === null || crimp.closedMm === null) return null;
  const found = { cover: cover.id, takesMm: cover.closedMm, closedMm: crimp.closedMm };
  if (!takes(cover.closedMm, crimp.closedMm)) return { ...found, fit: 'tight' };
  return { ...found, fit: takes(crimp.closedMm + COVER_PLAY_MM, cover.closedMm) ? 'fits' : 'loose' };
}

/** The smallest cover that goes over a closed crimp; null where none does. */
export function chooseCover(covers: readonly Component[], crimp: Crimp): CoverFit | null {
  const fits = [...covers]
    .sort(bySize((cover) => cover.closedMm ?? 0))
    .map((cover) => coverFit(cover, crimp));
  return fits.find((fit) => fit !== null && fit.fit !== 'tight') ?? null;
}
