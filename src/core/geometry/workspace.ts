/** The arrays that one loop is worked out on: flat, since a fit works out thousands. */
import { setJunction, type Junctions, type Outlines } from './junction.ts';

/**
 * The arrays that one loop is worked out on. Its parts are numbered from the
 * widest round; junction j joins part j and part j + 1.
 */
export type Workspace = Junctions & {
  /** Parts in the loop. */
  count: number;
  /** Place of part 0 in the caller's order. */
  first: number;
  /** Sum of along, mm. */
  lengthMm: number;
  /** Half of each part's across, mm; one more entry repeats part 0. */
  readonly halfAcross: Float64Array;
  /** Turn at each junction, rad. */
  readonly turn: Float64Array;
  /** Distance of each part from the next, mm. */
  readonly distance: Float64Array;
  /** Length of the strand from part 0 to each part, mm; the last entry closes the loop. */
  readonly arc: Float64Array;
  /** Corners of the hull in order, part 0 first and again last. */
  readonly corner: Int32Array;
  corners: number;
  /** Sine of the chord–tangent angle at each corner's left. */
  readonly leftSine: Float64Array;
  /** Chord–tangent angle of the chord on each corner's right, and on its left, rad. */
  readonly rightAngle: Float64Array;
  readonly leftAngle: Float64Array;
  /** How far round the strand comes: the sum of the chords' central angles, rad. */
  angleRad: number;
  /** Its change with the radius, rad/mm, distances held; never above 0. Good enough to steer by. */
  slope: number;
};

/** Arrays for loops of up to `capacity` parts, to be filled again and again. */
export function newWorkspace(capacity: number): Workspace {
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
    distance: floats(),
    arc: floats(),
    corner: new Int32Array(capacity + 1),
    corners: 0,
    leftSine: floats(),
    rightAngle: floats(),
    leftAngle: floats(),
    angleRad: 0,
    slope: 0,
  };
}

/**
 * Loads a loop: the first `count` entries of `sequence`, each the kind of one
 * part. Every kind must have a positive along and across.
 */
export function loadLoop(work: Workspace, outlines: Outlines, sequence: Int32Array, count: number): void {
  const { halfAlong, halfAcross } = outlines;
  let first = 0;
  let length = 0;
  for (let index = 0; index < count; index += 1) {
    const kind = sequence[index]!;
    length += 2 * halfAlong[kind]!;
    if (halfAcross[kind]! > halfAcross[sequence[first]!]!) first = index;
  }
  work.count = count;
  work.first = first;
  work.lengthMm = length;
  let here = sequence[first]!;
  for (let index = 0, at = first; index < count; index += 1) {
    at = at + 1 === count ? 0 : at + 1;
    const next = sequence[at]!;
    work.halfAcross[index] = halfAcross[here]!;
    setJunction(work, index, outlines, here, next);
    here = next;
  }
  work.halfAcross[count] = work.halfAcross[0]!;
  turnEvenly(work);
}

/** Has every junction turn by its part of the whole length: where a search for the true turns begins. */
export function turnEvenly({ count, straight, round, turn, lengthMm }: Workspace): void {
  for (let index = 0; index < count; index += 1) {
    turn[index] = (2 * Math.PI * (straight[index]! + round[index]!)) / lengthMm;
  }
}

/** Sets every neighbours' distance from their turn. */
export function setDistances({ count, straight, rim, round, turn, distance, arc }: Workspace): void {
  let sum = 0;
  let lastS = 0;
  let lastR = 0;
  let lastTurn = 0;
  let turned = 0;
  for (let index = 0; index < count; index += 1) {
    arc[index] = sum;
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
    const apart = turned + round[index]!;
    distance[index] = apart;
    sum += apart;
  }
  arc[count] = sum;
}

/**
 * Takes over the turns of the hull, scaled by `scale`: a corner's falls half on
 * each of its junctions; parts on a chord lie in line with it.
 * @returns the largest change of any turn, rad.
 */
export function takeTurns(work: Workspace, scale: number): number {
  const { corners, corner, turn, leftAngle, rightAngle } = work;
  let change = 0;
  let junction = 0;
  for (let index = 0; index < corners; index += 1) {
    const from = corner[index]!;
    const to = corner[index + 1]!;
    const leaving = ((leftAngle[index]! + rightAngle[index]!) / 2) * scale;
    const onward = index + 1 === corners ? rightAngle[0]! : rightAngle[index + 1]!;
    const arriving = ((leftAngle[index + 1]! + onward) / 2) * scale;
    for (; junction < to; junction += 1) {
      let now = 0;
      if (junction === from) now += leaving;
      if (junction === to - 1) now += arriving;
      change = Math.max(change, Math.abs(now - turn[junction]!));
      turn[junction] = now;
    }
  }
  return change;
}
