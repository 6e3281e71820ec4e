/**
 * The taut strand round a cylinder: one kernel, worked on flat arrays because
 * a fit solves hundreds of loops. `verifyLoop.ts` checks what comes out of it
 * without sharing a line.
 *
 * Parts are indexed from the fattest round, so that part 0 always touches the
 * cylinder and is never lifted. Junction j joins part j and part j + 1.
 */
import type { Part } from './part.ts';

export type Taut = Junctions & {
  /** Parts in the loop. */
  count: number;
  /** Index, in the caller's order, of part 0. */
  first: number;
  /** Sum of along, mm. */
  lengthMm: number;
  /** Half of each part's across, mm; one more entry repeats part 0. */
  readonly halfAcross: Float64Array;
  /** Turn at each junction, rad. */
  readonly turn: Float64Array;
  /** Distance of each part from the next, mm. */
  readonly toNext: Float64Array;
  /** Distance of each part from part 0 along the chords, mm; the last entry closes the loop. */
  readonly reach: Float64Array;
  /** Hull corners in order, part 0 first and again last. */
  readonly corner: Int32Array;
  corners: number;
  /** Cosine of the angle at a corner between the cylinder's axis and the chord on its left. */
  readonly leftCos: Float64Array;
  /** By how much the chord on a corner's right leans in from the tangent there, rad; on its left likewise. */
  readonly rightLean: Float64Array;
  readonly leftLean: Float64Array;
  /** What the last sweep found: the chords' central angles added up, rad; 2π where the loop closes. */
  angleRad: number;
  /** Its change with the radius, rad/mm, distances held; never above 0. */
  slope: number;
};

/** Arrays for loops of up to `capacity` parts, to be filled again and again. */
export function newTaut(capacity: number): Taut {
  const floats = (): Float64Array => new Float64Array(capacity + 1);
  return {
    count: 0,
    first: 0,
    lengthMm: 0,
    halfAcross: floats(),
    straight: floats(),
    rim: floats(),
    round: floats(),
    turn: floats(),
    toNext: floats(),
    reach: floats(),
    corner: new Int32Array(capacity + 1),
    corners: 0,
    leftCos: floats(),
    rightLean: floats(),
    leftLean: floats(),
    angleRad: 0,
    slope: 0,
  };
}

/** Outlines that parts share, one entry a kind, mm. */
export type Outlines = {
  readonly halfAlong: Float64Array;
  readonly halfAcross: Float64Array;
  readonly rounding: Float64Array;
};

/** Rounding as the outline allows it, so that a careless figure can't turn a part inside out. */
function roundingOf(part: Part): number {
  return Math.max(0, Math.min(part.roundingMm, part.alongMm / 2, part.acrossMm / 2));
}

export function outlinesOf(parts: readonly Part[]): Outlines {
  return {
    halfAlong: Float64Array.from(parts, (part) => part.alongMm / 2),
    halfAcross: Float64Array.from(parts, (part) => part.acrossMm / 2),
    rounding: Float64Array.from(parts, roundingOf),
  };
}

/** Neighbours that turn by t are `straight·cos(t/2) + rim·sin(t/2) + round` apart, mm. */
export type Junctions = {
  readonly straight: Float64Array;
  readonly rim: Float64Array;
  readonly round: Float64Array;
};

/** Notes at a place of `into` how far apart two kinds keep as neighbours. */
export function setJunction(
  into: Junctions,
  at: number,
  { halfAlong, halfAcross, rounding }: Outlines,
  one: number,
  other: number,
): void {
  const cOne = rounding[one]!;
  const cOther = rounding[other]!;
  into.straight[at] = halfAlong[one]! - cOne + halfAlong[other]! - cOther;
  into.rim[at] = 2 * Math.min(halfAcross[one]! - cOne, halfAcross[other]! - cOther);
  into.round[at] = cOne + cOther;
}

/**
 * Loads a loop: the first `count` entries of `sequence`, each the kind of one
 * part. Every kind must have a positive along and across.
 */
export function loadTaut(taut: Taut, outlines: Outlines, sequence: Int32Array, count: number): void {
  const { halfAlong, halfAcross } = outlines;
  let first = 0;
  let length = 0;
  for (let index = 0; index < count; index += 1) {
    const kind = sequence[index]!;
    length += 2 * halfAlong[kind]!;
    if (halfAcross[kind]! > halfAcross[sequence[first]!]!) first = index;
  }
  taut.count = count;
  taut.first = first;
  taut.lengthMm = length;
  let here = sequence[first]!;
  for (let index = 0, at = first; index < count; index += 1) {
    at = at + 1 === count ? 0 : at + 1;
    const next = sequence[at]!;
    taut.halfAcross[index] = halfAcross[here]!;
    setJunction(taut, index, outlines, here, next);
    here = next;
  }
  taut.halfAcross[count] = taut.halfAcross[0]!;
  turnEvenly(taut);
}

/** Has every junction turn by its part of the whole length: where a search for the true turns begins. */
export function turnEvenly({ count, straight, round, turn, lengthMm }: Taut): void {
  for (let index = 0; index < count; index += 1) {
    turn[index] = (2 * Math.PI * (straight[index]! + round[index]!)) / lengthMm;
  }
}

/** Sets every neighbours' distance from their turn, and adds them up from part 0. */
function layDistances(taut: Taut): void {
  const { count, straight, rim, round, turn, toNext, reach } = taut;
  let sum = 0;
  let lastS = 0;
  let lastR = 0;
  let lastTurn = 0;
  let turned = 0;
  for (let index = 0; index < count; index += 1) {
    reach[index] = sum;
    const s = straight[index]!;
    const r = rim[index]!;
    const t = turn[index]!;
    // Balls on balls stay as far apart at any turn, and runs of one bead turn alike: most need no sine.
    if (s !== lastS || r !== lastR || t !== lastTurn) {
      turned = s === 0 && r === 0 ? 0 : s * Math.cos(t / 2) + r * Math.sin(t / 2);
      lastS = s;
      lastR = r;
      lastTurn = t;
    }
    const distance = turned + round[index]!;
    toNext[index] = distance;
    sum += distance;
  }
  reach[count] = sum;
}

/**
 * The hull in one pass with a stack. A corner is dropped when its two chords
 * meet at more than a straight angle, on the side away from the cylinder; of
 * two angles below π that is when their cosines add to less than nothing.
 */
function hull(taut: Taut, radiusMm: number): void {
  const { count, halfAcross, toNext, reach, corner, leftCos } = taut;
  corner[0] = 0;
  let top = 0;
  for (let next = 1; next <= count; next += 1) {
    const r2 = radiusMm + halfAcross[next]!;
    for (;;) {
      const at = corner[top]!;
      const r1 = radiusMm + halfAcross[at]!;
      // Neighbours by their own distance: alike junctions then give alike figures to the last bit.
      const d = at + 1 === next ? toNext[at]! : reach[next]! - reach[at]!;
      const square = d * d;
      // (r1² − r2²) as a product: no loss where they are nearly equal.
      const skew = (r1 - r2) * (r1 + r2);
      if (top > 0 && skew + square + leftCos[top]! * 2 * d * r1 < 0) {
        top -= 1;
        continue;
      }
      top += 1;
      corner[top] = next;
      leftCos[top] = (square - skew) / (2 * d * r2);
      break;
    }
  }
  taut.corners = top;
}

/** Angle whose sine is `x`, for a chord that can't reach (x beyond 1) the right angle. */
function lean(x: number): number {
  return x >= 1 ? Math.PI / 2 : x <= -1 ? -Math.PI / 2 : Math.asin(x);
}

/** Tangent good enough to steer by: exact where the series would stray. */
function steeringTan(half: number): number {
  return half < 0.5 ? half * (1 + (half * half) / 3) : half > 1.55 ? 50 : Math.tan(half);
}

/**
 * Draws the strand taut round a cylinder of this radius with the distances
 * that the present turns give, and notes how far round it comes. The turns
 * stay as they are; `takeTurns` takes over the new ones.
 */
export function sweep(taut: Taut, radiusMm: number): void {
  layDistances(taut);
  drawTaut(taut, radiusMm);
}

/** Draws the strand taut round a cylinder of this radius with its parts as far apart as `toNext` and `reach` say. */
export function drawTaut(taut: Taut, radiusMm: number): void {
  hull(taut, radiusMm);
  const { corners, corner, halfAcross, toNext, reach, leftCos, leftLean, rightLean } = taut;
  let angle = 0;
  let slope = 0;
  let lastR1 = 0;
  let lastR2 = 0;
  let lastD = 0;
  let right = 0;
  let left = 0;
  let bend = 0;
  for (let index = 0; index < corners; index += 1) {
    const from = corner[index]!;
    const to = corner[index + 1]!;
    const r1 = radiusMm + halfAcross[from]!;
    const r2 = radiusMm + halfAcross[to]!;
    const d = from + 1 === to ? toNext[from]! : reach[to]! - reach[from]!;
    // Runs of one bead are what strands are made of: a chord like the last one costs nothing.
    if (d !== lastD || r1 !== lastR1 || r2 !== lastR2) {
      left = lean(leftCos[index + 1]!);
      right = r1 === r2 ? left : lean(((r1 - r2) * (r1 + r2) + d * d) / (2 * d * r1));
      bend = steeringTan((right + left) / 2) * (1 / r1 + 1 / r2);
      lastR1 = r1;
      lastR2 = r2;
      lastD = d;
    }
    rightLean[index] = right;
    leftLean[index + 1] = left;
    angle += right + left;
    slope -= bend;
  }
  leftLean[0] = leftLean[corners]!;
  taut.angleRad = angle;
  taut.slope = slope;
}

/**
 * Takes over the turns of the last sweep, scaled by `scale`: a corner's turn
 * falls half on each of its junctions, since its hole axis halves the angle
 * between its chords; parts on a chord lie in line with it.
 * @param share how much of the way each turn goes there.
 * @returns the largest change of any turn that the whole way would be, rad.
 */
export function takeTurns(taut: Taut, scale: number, share: number): number {
  const { corners, corner, turn, leftLean, rightLean } = taut;
  let shift = 0;
  let junction = 0;
  for (let index = 0; index < corners; index += 1) {
    const from = corner[index]!;
    const to = corner[index + 1]!;
    const leaving = ((leftLean[index]! + rightLean[index]!) / 2) * scale;
    const onward = index + 1 === corners ? rightLean[0]! : rightLean[index + 1]!;
    const arriving = ((leftLean[index + 1]! + onward) / 2) * scale;
    for (; junction < to; junction += 1) {
      let now = 0;
      if (junction === from) now += leaving;
      if (junction === to - 1) now += arriving;
      const change = now - turn[junction]!;
      shift = Math.max(shift, Math.abs(change));
      // Alike junctions keep alike figures to the last bit.
      turn[junction] = share === 1 ? now : turn[junction]! + share * change;
    }
  }
  return shift;
}
