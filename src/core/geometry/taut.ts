/**
 * The taut strand round a cylinder: one kernel, worked on flat arrays because
 * a fit solves hundreds of loops. `verifyLoop.ts` checks what comes out of it
 * without sharing a line.
 *
 * Parts are indexed from the fattest round, so that part 0 always touches the
 * cylinder and is never lifted. Junction j joins part j and part j + 1.
 */
import type { Part } from './part.ts';

export type Taut = {
  /** Parts in the loop. */
  count: number;
  /** Index, in the caller's order, of part 0. */
  first: number;
  /** Sum of along, mm. */
  lengthMm: number;
  /** Half of each part's across, mm; one more entry repeats part 0. */
  readonly halfAcross: Float64Array;
  /** Neighbours that turn by t are `straight·cos(t/2) + rim·sin(t/2) + round` apart, mm. */
  readonly straight: Float64Array;
  readonly rim: Float64Array;
  readonly round: Float64Array;
  /** Turn at each junction, rad. */
  readonly turn: Float64Array;
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
    reach: floats(),
    corner: new Int32Array(capacity + 1),
    corners: 0,
    leftCos: floats(),
    rightLean: floats(),
    leftLean: floats(),
  };
}

function fattest(parts: readonly Part[]): number {
  let best = 0;
  for (let index = 1; index < parts.length; index += 1) {
    if (parts[index]!.acrossMm > parts[best]!.acrossMm) best = index;
  }
  return best;
}

/** Rounding as the outline allows it, so that a careless figure can't turn a part inside out. */
function roundingOf(part: Part): number {
  return Math.max(0, Math.min(part.roundingMm, part.alongMm / 2, part.acrossMm / 2));
}

/** Loads a loop. Every part must have a positive along and across. */
export function loadTaut(taut: Taut, parts: readonly Part[]): void {
  const count = parts.length;
  const first = fattest(parts);
  taut.count = count;
  taut.first = first;
  taut.lengthMm = 0;
  for (let index = 0; index < count; index += 1) {
    const here = parts[(first + index) % count]!;
    const next = parts[(first + index + 1) % count]!;
    const cHere = roundingOf(here);
    const cNext = roundingOf(next);
    taut.halfAcross[index] = here.acrossMm / 2;
    taut.straight[index] = here.alongMm / 2 - cHere + next.alongMm / 2 - cNext;
    taut.rim[index] = 2 * Math.min(here.acrossMm / 2 - cHere, next.acrossMm / 2 - cNext);
    taut.round[index] = cHere + cNext;
    taut.lengthMm += here.alongMm;
  }
  taut.halfAcross[count] = taut.halfAcross[0]!;
  for (let index = 0; index < count; index += 1) {
    const share = (taut.straight[index]! + taut.round[index]!) / taut.lengthMm;
    taut.turn[index] = 2 * Math.PI * share;
  }
}

/** Sets every neighbours' distance from their turn, added up from part 0. */
function layDistances(taut: Taut): void {
  const { count, straight, rim, round, turn, reach } = taut;
  let sum = 0;
  for (let index = 0; index < count; index += 1) {
    reach[index] = sum;
    const s = straight[index]!;
    const r = rim[index]!;
    // Balls on balls stay as far apart at any turn, which saves most of the sines.
    if (s === 0 && r === 0) sum += round[index]!;
    else {
      const half = turn[index]! / 2;
      sum += s * Math.cos(half) + r * Math.sin(half) + round[index]!;
    }
  }
  reach[count] = sum;
}

/**
 * The hull in one pass with a stack. A corner is dropped when its two chords
 * meet at more than a straight angle, on the side away from the cylinder; of
 * two angles below π that is when their cosines add to less than nothing.
 */
function hull(taut: Taut, radiusMm: number): void {
  const { count, halfAcross, reach, corner, leftCos } = taut;
  corner[0] = 0;
  let top = 0;
  for (let next = 1; next <= count; next += 1) {
    const r2 = radiusMm + halfAcross[next]!;
    for (;;) {
      const at = corner[top]!;
      const r1 = radiusMm + halfAcross[at]!;
      const d = reach[next]! - reach[at]!;
      const twice = 2 * d;
      // (r1² − r2²) as a product: no loss where they are nearly equal.
      const skew = (r1 - r2) * (r1 + r2);
      if (top > 0 && (skew + d * d) / (twice * r1) + leftCos[top]! < 0) {
        top -= 1;
        continue;
      }
      top += 1;
      corner[top] = next;
      leftCos[top] = (d * d - skew) / (twice * r2);
      break;
    }
  }
  taut.corners = top;
}

/** Angle whose sine is `x`, for a chord that can't reach (x beyond 1) the right angle. */
function lean(x: number): number {
  return x >= 1 ? Math.PI / 2 : x <= -1 ? -Math.PI / 2 : Math.asin(x);
}

/** What one sweep found. */
export type Sweep = {
  /** The chords' central angles added up, rad; 2π where the loop closes. */
  angleRad: number;
  /** Its change with the radius, rad/mm, distances held. */
  slope: number;
};

/**
 * Draws the strand taut round a cylinder of this radius with the distances
 * that the present turns give, and reports how far round it comes. The turns
 * stay as they are; `takeTurns` takes over the new ones.
 */
export function sweep(taut: Taut, radiusMm: number, out: Sweep): void {
  layDistances(taut);
  hull(taut, radiusMm);
  const { corners, corner, halfAcross, reach, leftCos, leftLean, rightLean } = taut;
  let angle = 0;
  let slope = 0;
  for (let index = 0; index < corners; index += 1) {
    const from = corner[index]!;
    const to = corner[index + 1]!;
    const r1 = radiusMm + halfAcross[from]!;
    const r2 = radiusMm + halfAcross[to]!;
    const d = reach[to]! - reach[from]!;
    const right = lean(((r1 - r2) * (r1 + r2) + d * d) / (2 * d * r1));
    const left = lean(leftCos[index + 1]!);
    rightLean[index] = right;
    leftLean[index + 1] = left;
    const chord = right + left;
    angle += chord;
    // tan(φ/2) by its two leans; a chord straight through the axis has no finite slope.
    if (chord < 3.1) slope -= Math.tan(chord / 2) * (1 / r1 + 1 / r2);
  }
  leftLean[0] = leftLean[corners]!;
  out.angleRad = angle;
  out.slope = slope;
}

/**
 * Takes over the turns of the last sweep, scaled by `scale`: a corner's turn
 * falls half on each of its junctions, since its hole axis halves the angle
 * between its chords; parts on a chord lie in line with it.
 * @returns the largest change of any turn, rad.
 */
export function takeTurns(taut: Taut, scale: number): number {
  const { count, corners, corner, turn, leftLean, rightLean } = taut;
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
      const change = Math.abs(now - turn[junction]!);
      if (change > shift) shift = change;
      turn[junction] = now;
    }
  }
  return count === 0 ? 0 : shift;
}
