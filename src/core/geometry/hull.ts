/**
 * The strand drawn taut round a cylinder, its neighbours held at given
 * distances: which parts touch the cylinder, and how far round the strand comes.
 *
 * Each part's centre is at some distance r from the cylinder's axis, no nearer
 * than its floor, radius + across/2. Of the chord between two centres:
 *
 *          tangent
 *              /  λ1                      λ: chord–tangent angle, by which the
 *         P1  ●───────── d ────────● P2      chord leans in from the tangent
 *              \                  /          at its end
 *            r1 \                / r2     φ: central angle
 *                \      φ       /
 *                 \            /          the triangle's angles: 90° − λ1, 90° − λ2
 *                     axis                and φ; so φ = λ1 + λ2, and
 *
 *     sin λ1 = (d² + r1² − r2²)/(2 d r1),
 *
 * the last by the law of cosines. The loop closes where all φ add to 2π.
 *
 * WHICH PARTS TOUCH. Let S be the length of the strand up to a part. On a
 * straight line r² is a quadratic of the length, with 1 before its square
 * (Pythagoras from the foot of the perpendicular), so w = r² − S² is linear on
 * it. Where the strand bends round the cylinder the slope of w falls, where it
 * would bend the other way it rises. A taut strand has no such bend, lies on or
 * above all floors, and on one wherever it bends. So w of the taut strand is
 * the upper convex hull of the points
 *
 *     (S, (radius + across/2)² − S²)
 *
 * and one pass with a stack finds it (Andrew's monotone chain; the points come
 * in order of S): a corner is dropped while the slope rises at it, which in
 * angles says that its two chords meet at more than 180° outside. The parts
 * between two corners lie on the chord, lifted off the cylinder. The pass
 * begins and ends at the widest part, which is always a corner: r is greatest
 * at one, since r² is convex along a chord.
 *
 * A corner's hole axis halves the angle θ = λ + λ′ of its two chords, since the
 * wire pulls at either mouth of the hole alike, and the part swings until it
 * does; so half of θ falls on each of its junctions.
 *
 * THE ANGLE ROUND. Call the sum of all φ, with the distances held, Φ(a, d), a
 * being the radius. Moving one centre outwards changes the φ on either side by
 *
 *     −(tan λ + tan λ′)/r,                                               (∗)
 *
 * which is positive where the strand bends inwards (λ + λ′ < 0), nothing where
 * it is straight, and negative at a corner. From that:
 *
 * (A) Φ(a, d) is the greatest angle that the strand can come round with its
 *     centres on or above their floors: move out any part where it bends
 *     inwards until it is straight there, which brings it further round and
 *     ends at the strand taut over where its parts were; then let those places
 *     sink to the floors, which does too. So Φ falls as a grows, which raises
 *     all floors, and there is one radius where it is 2π.
 * (B) A chord lengthened by δ brings the strand round by δ/p more, p being the
 *     distance of its line from the axis: dφ/dd = 1/p with both ends where they
 *     are, and by (∗) it is nothing how lifted parts move. So Φ grows with d.
 *
 * With the turns to make the distances of, see `close.ts`.
 *
 * `verify/loop.ts` checks what comes out without sharing a line.
 */
import type { Workspace } from './workspace.ts';

/** The monotone chain, in polar form: slopes are told by sines, which keeps every digit where radii are nearly equal. */
function findCorners(work: Workspace, radiusMm: number): void {
  const { count, halfAcross, distance, arc, corner, leftSine } = work;
  corner[0] = 0;
  let top = 0;
  for (let next = 1; next <= count; next += 1) {
    const r2 = radiusMm + halfAcross[next]!;
    for (;;) {
      const at = corner[top]!;
      const r1 = radiusMm + halfAcross[at]!;
      // Neighbours by their own distance: alike junctions then give alike figures to the last bit.
      const d = at + 1 === next ? distance[at]! : arc[next]! - arc[at]!;
      const square = d * d;
      // (r1² − r2²) as a product: no loss where they are nearly equal.
      const skew = (r1 - r2) * (r1 + r2);
      // Twice r1 times both sines at `at`, and so minus the change of slope of w there.
      if (top > 0 && skew + square + leftSine[top]! * 2 * d * r1 < 0) {
        top -= 1;
        continue;
      }
      top += 1;
      corner[top] = next;
      leftSine[top] = (square - skew) / (2 * d * r2);
      break;
    }
  }
  work.corners = top;
}

/**
 * Angle of a sine. A chord too long to pass the axis has a sine beyond 1: the
 * angle goes on beyond 90° as steeply as it came, so that a search finds its way back.
 */
function chordTangentAngle(sine: number): number {
  if (sine > 1) return Math.PI / 2 + Math.sqrt(2 * (sine - 1));
  return sine < -1 ? -Math.PI / 2 - Math.sqrt(2 * (-1 - sine)) : Math.asin(sine);
}

/** Half angles below this are steered by the first two terms of the tangent's series, off by 1 % at the most. */
const SERIES_RAD = 0.5;
/** From this on the tangent is held: near 90° it would lead to no step at all. */
const STEEP_RAD = 1.55;
const STEEPEST = 50;

/** Tangent good enough to steer by. */
function steeringTan(half: number): number {
  if (half < SERIES_RAD) return half * (1 + (half * half) / 3);
  return half > STEEP_RAD ? STEEPEST : Math.tan(half);
}

/** Draws the strand taut round a cylinder of this radius with the distances it has, and notes how far round it comes. */
export function drawHull(work: Workspace, radiusMm: number): void {
  findCorners(work, radiusMm);
  const { corners, corner, halfAcross, distance, arc, leftSine, leftAngle, rightAngle } = work;
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
    const d = from + 1 === to ? distance[from]! : arc[to]! - arc[from]!;
    // Runs of one bead are what strands are made of: a chord like the last one costs nothing.
    if (d !== lastD || r1 !== lastR1 || r2 !== lastR2) {
      left = chordTangentAngle(leftSine[index + 1]!);
      right = r1 === r2 ? left : chordTangentAngle(((r1 - r2) * (r1 + r2) + d * d) / (2 * d * r1));
      // (∗) at both ends, as if both λ were φ/2.
      bend = steeringTan((right + left) / 2) * (1 / r1 + 1 / r2);
      lastR1 = r1;
      lastR2 = r2;
      lastD = d;
    }
    rightAngle[index] = right;
    leftAngle[index + 1] = left;
    angle += right + left;
    slope -= bend;
  }
  leftAngle[0] = leftAngle[corners]!;
  work.angleRad = angle;
  work.slope = slope;
}
