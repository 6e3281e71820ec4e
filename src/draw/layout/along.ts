/** A strand laid on a curve: every centre on the line, every neighbour touching the next. */
import type { Component } from '#core/design/component.ts';
import type { Curve } from './curve.ts';
import type { Part, Spot } from './spot.ts';
import { lengthOf } from './straight.ts';

/** Halvings of a bracket at most a few components wide: leaves less than a ten-thousandth of a millimetre. */
const HALVINGS = 28;

export type Laid = {
  readonly spots: readonly Spot[];
  /** Where along the curve each centre lies, mm. */
  readonly centresMm: readonly number[];
  /** Where along the curve the strand's two edges lie, mm. */
  readonly fromMm: number;
  readonly toMm: number;
};

/**
 * Lays `parts` so that the middle of the strand is `middleMm` along the curve, and works outwards:
 * what is exact is the middle, where the eye and the measure are.
 * Where the curve bends, components that turn on their rims take a little more of it than their own length.
 */
export function placeAlong(parts: readonly Part[], curve: Curve, middleMm: number): Laid {
  const { at: middle, offsetMm } = middleOf(parts);
  const start = startOf(parts, curve, middleMm, middle, offsetMm);

  const centresMm: number[] = [];
  centresMm[middle] = start;
  for (let at = middle + 1; at < parts.length; at += 1) {
    centresMm[at] = nextAlong(parts, curve, at - 1, at, centresMm[at - 1] ?? start, 1);
  }
  for (let at = middle - 1; at >= 0; at -= 1) {
    centresMm[at] = nextAlong(parts, curve, at + 1, at, centresMm[at + 1] ?? start, -1);
  }
  const spots = parts.map((part, at) => ({ ...part, ...curve.at(centresMm[at] ?? start) }));
  return {
    spots,
    centresMm,
    fromMm: (centresMm[0] ?? middleMm) - (parts[0]?.component.alongMm ?? 0) / 2,
    toMm: (centresMm.at(-1) ?? middleMm) + (parts.at(-1)?.component.alongMm ?? 0) / 2,
  };
}

/** The component at the middle of the strand's length, and its centre's distance from that middle. */
function middleOf(parts: readonly Part[]): { at: number; offsetMm: number } {
  const halfMm = lengthOf(parts) / 2;
  let edgeMm = 0;
  for (const [at, part] of parts.entries()) {
    const nextMm = edgeMm + part.component.alongMm;
    // A hair's breadth, so that rounding doesn't put a mirrored strand's middle past its middle bead.
    if (nextMm >= halfMm - 1e-9) return { at, offsetMm: (edgeMm + nextMm) / 2 - halfMm };
    edgeMm = nextMm;
  }
  return { at: 0, offsetMm: 0 };
}

/** Corrections of a joint in the middle; each leaves a small share of the last. */
const JOINT_ROUNDS = 6;

/**
 * Where the middle component goes. Where the middle falls on a joint it is the joint that stays in place,
 * whatever its two neighbours take of the bend: a strand and its mirror image lie alike.
 */
function startOf(
  parts: readonly Part[],
  curve: Curve,
  middleMm: number,
  middle: number,
  offsetMm: number,
): number {
  let start = middleMm + offsetMm;
  const held = parts[middle]?.component.alongMm ?? 0;
  const next = parts[middle + 1]?.component.alongMm;
  if (next === undefined || Math.abs(offsetMm + held / 2) > 1e-9) return start;
  for (let round = 0; round < JOINT_ROUNDS; round += 1) {
    const nextMm = nextAlong(parts, curve, middle, middle + 1, start, 1);
    start += middleMm - (start + held / 2 + (nextMm - next / 2)) / 2;
  }
  return start;
}

/** Where along the curve the component `at` touches its neighbour, which stands at `fromMm`. */
function nextAlong(
  parts: readonly Part[],
  curve: Curve,
  neighbour: number,
  at: number,
  fromMm: number,
  direction: 1 | -1,
): number {
  const held = parts[neighbour] as Part;
  const wanted = parts[at] as Part;
  const from = curve.at(fromMm);
  const apart = (byMm: number): number => {
    const to = curve.at(fromMm + direction * byMm);
    const distanceMm = Math.hypot(to.xMm - from.xMm, to.yMm - from.yMm);
    return distanceMm - touchMm(held.component, wanted.component, turnBetween(from.turnRad, to.turnRad));
  };
  let near = 0;
  let far =
    held.component.alongMm + wanted.component.alongMm + held.component.acrossMm + wanted.component.acrossMm;
  for (let halving = 0; halving < HALVINGS; halving += 1) {
    const half = (near + far) / 2;
    if (apart(half) < 0) near = half;
    else far = half;
  }
  return fromMm + (direction * (near + far)) / 2;
}

/** The angle from one direction to another, −π to π. */
export function turnBetween(fromRad: number, toRad: number): number {
  const turn = toRad - fromRad;
  return turn - 2 * Math.PI * Math.round(turn / (2 * Math.PI));
}

/**
 * Least distance (mm) between the centres of two components whose holes turn by `turnRad`, touching and
 * not overlapping: rectangles with rounded corners, hole axes in line where they meet.
 */
function touchMm(first: Component, second: Component, turnRad: number): number {
  const halfRad = Math.abs(turnRad) / 2;
  const flatMm = first.alongMm / 2 - first.roundingMm + (second.alongMm / 2 - second.roundingMm);
  const rimMm = Math.min(first.acrossMm / 2 - first.roundingMm, second.acrossMm / 2 - second.roundingMm);
  return (
    flatMm * Math.cos(halfRad) +
    2 * Math.max(0, rimMm) * Math.sin(halfRad) +
    first.roundingMm +
    second.roundingMm
  );
}
