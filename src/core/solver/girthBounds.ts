/**
 * Proven bounds of the inside girth of every strand in a box of counts.
 *
 * Notation. a: radius of the cylinder; h: half a part's across; d: distances of
 * neighbours; t: their turns; Φ(a, d): how far round the taut strand comes when
 * its distances are held at d (`geometry/hull.ts`). Of a loop that closes at a°
 * with turns t°, no more is used than Φ(a°, d(t°)) = 2π, that its turns are not
 * negative and add to 2π, and what `geometry/turnBounds.ts` says of them. So it
 * is all the same how it was solved, and what strand it belongs to.
 *
 * Two facts of held distances, from `geometry/hull.ts`:
 *
 * (A) Φ(a, d) is the greatest angle that the strand can come round, however far
 *     out its parts lie, none nearer than a + h. So Φ falls as a grows.
 * (B) Φ rises with every distance, at the rate 1/p, where p is the distance of
 *     its chord's line from the axis.
 *
 * (C) One more copy of a motif that is strung already doesn't lessen Φ, as long
 *     as a distance hangs on nothing but the two kinds it lies between.
 *     Proof. Let m1 … mk be a copy with distances r1 … rk from the axis on the
 *     taut strand, and rk ≥ r1. String the new copy after it, each part at
 *     max(ri, rk − its distance from mk along the strand). That is no nearer
 *     than allowed, and neighbours arc each other. Its last part lies at rk,
 *     so every angle that was there before is there again, and those within the
 *     new copy are not negative; by (A) the taut strand comes no less far round.
 *     Where rk < r1, string it before, mirrored.
 *     (The first copy of a motif is another matter: it parts neighbours that
 *     touched, and may push them out. So 0 is told apart from 1 and more.)
 *
 * Upper bound. Let N be any strand of the box, U its upper corner, and suppose
 * a° > a. From radius a on no turn is more than u and no distance more than
 * M + K·t, with M, K for `mostMm`, `mostOpening`, and no chord nearer than
 * `chordMm`. So
 *
 *     2π = Φ_N(a°, d(t°)) ≤ Φ_N(a°, M) + K·Σt°/chordMm         by (B)
 *                         ≤ Φ_U(a, M) + 2πK/chordMm            by (A), (C).
 *
 * Where that is less than 2π, no strand of the box has a radius beyond a.
 *
 * Lower bound. Let L be the lower corner, and let it be known that a° ≥ b. From
 * radius b on no distance is less than m + k·t, with m, k for `leastMm`,
 * `leastOpening`. Suppose b ≤ a° < a. A chord's line is no farther out than the
 * nearer of its two corners, so no farther than a + h2, where h2 is the second
 * largest h of the strand (two corners there are, once Φ is π or more). So
 *
 *     2π = Φ_N(a°, d(t°)) ≥ Φ_N(a°, m) + k·Σt°/(a° + h2)       by (B)
 *                         ≥ Φ_L(a, m) + 2πk/(a + h2)           by (A), (C).
 *
 * Where that is 2π or more, it can't be: every strand has a° ≥ a, and a takes
 * the place of b. The first b: a closed loop's corners make a convex polygon
 * inside a circle of radius a° + h1, so its sides are no longer than 2π(a° + h1)
 * together; they are the strand's length less what turning shortens it. A
 * distance is concave in its turn, so it loses at most its share of (straight −
 * rim) for every π that it turns, and all of them together twice the largest.
 *
 * That a strand of the box closes at all: map turns t (0 ≤ t ≤ u from b on,
 * adding to 2π) to those of the strand held at d(t) where it closes, by the
 * lower bound at b or more. That is continuous, and into the same set, so it
 * has a fixed point (Brouwer), which is a closed loop.
 *
 * Why k and K: a strand of tubes opens by about half a rim for every radian,
 * wherever the turning falls. To hold each junction at its least would lose all
 * of that, and at its most count it twice where parts are lifted and don't turn
 * at all. Held apart from the distances, only what junctions differ by is lost.
 */
import { neighbourhood } from '../geometry/turnBounds.ts';
import type { Part } from '../geometry/part.ts';
import { drawHull } from '../geometry/hull.ts';
import type { Outlines } from '../geometry/junction.ts';
import type { Workspace } from '../geometry/workspace.ts';
import { heldDistances } from './heldDistances.ts';
import { lengthIn, reversed, runsAfter, type Stretch } from './stretches.ts';
import type { StrungLoop } from './strungLoop.ts';

const FULL_TURN = 2 * Math.PI;
/** A bound is close enough where no better is to be had by this much of radius, mm. */
const CLOSE_MM = 0.005;
/** Steps towards a bound. It takes two or three; stopped early it holds as well, only wider. */
const MOST_STEPS = 12;
/** No loop of a wrist is smaller, mm; only so that no step leads to a radius below nothing. */
const SMALLEST_MM = 0.5;

/**
 * Both take counts as the corner of a box within the section's limits and hold
 * for every choice in it that leaves out the same sections, in mm.
 */
export type GirthBounds = {
  /** No loop with these counts or more has a smaller radius; 0 where nothing is proven. */
  readonly leastRadius: (counts: readonly number[], guessMm: number) => number;
  /** No loop with these counts or fewer has a larger one; Infinity where nothing is proven. */
  readonly mostRadius: (counts: readonly number[], guessMm: number) => number;
};

/** Half of across of every part that a strand may have, twice where it may stand there more than once; largest first. */
function halvesAcross(halfAcross: Float64Array, loop: readonly Stretch[]): number[] {
  const halves = loop.flatMap(({ kinds, once }) =>
    kinds.flatMap((kind) => new Array<number>(once ? 1 : 2).fill(halfAcross[kind]!)),
  );
  return halves.sort((one, other) => other - one);
}

/**
 * @param strung strings the loop for any counts; it may be used for other things in between.
 * @param usual counts that the strand mostly has: what the bounds are closest for.
 */
export function girthBounds(
  parts: readonly Part[],
  outlines: Outlines,
  loop: readonly Stretch[],
  strung: StrungLoop,
  usual: readonly number[],
): GirthBounds {
  const around = neighbourhood(
    outlines,
    runsAfter(loop, parts.length),
    runsAfter(reversed(loop), parts.length),
  );
  const [largestMm = 0, secondMm = largestMm] = halvesAcross(outlines.halfAcross, loop);
  const { straight, rim } = around.junctions;
  const shorteningMm = 2 * straight.reduce((most, mm, at) => Math.max(most, mm - rim[at]!), 0);
  const length = (counts: readonly number[]): number => lengthIn(loop, parts, counts);

  /** Junctions of the loop strung last, from the workspace's first part on. */
  let order = new Int32Array(0);
  const string = (counts: readonly number[]): Workspace => {
    const work = strung.string(counts);
    if (work.count > order.length) order = new Int32Array(2 * work.count);
    strung.neighbours((index, kind, next) => {
      order[index] = around.junctionOf(kind, next);
    });
    return work;
  };
  /** Draws its hull with its neighbours held at these distances. */
  const draw = (work: Workspace, distancesMm: Float64Array, radiusMm: number): void => {
    const { count, distance, arc } = work;
    let sum = 0;
    for (let index = 0; index < count; index += 1) {
      const apart = distancesMm[order[index]!]!;
      arc[index] = sum;
      distance[index] = apart;
      sum += apart;
    }
    arc[count] = sum;
    drawHull(work, radiusMm);
  };

  const times = new Float64Array(straight.length);
  const { count } = string(usual);
  for (const junction of order.subarray(0, count)) times[junction]! += 1;
  const distances = heldDistances(around, times, secondMm, length(usual) / FULL_TURN);

  /** Newton on the radius; the angle goes roughly as 1/radius. */
  const stepTo = (radius: number, angle: number, slope: number): number =>
    radius + ((angle - FULL_TURN) / -slope) * (angle / FULL_TURN);
  return {
    leastRadius: (counts, guessMm) => {
      let proven = (length(counts) - shorteningMm) / FULL_TURN - largestMm;
      const work = string(counts);
      if (!(proven > 0) || work.count < 3) return 0;
      let radius = Math.max(guessMm, proven + CLOSE_MM);
      for (let step = 0; step < MOST_STEPS; step += 1) {
        const { leastMm, leastOpening, chordMm } = distances(proven);
        if (!(chordMm > 0)) return 0;
        draw(work, leastMm, radius);
        const { angleRad, slope } = work;
        const opening = (FULL_TURN * leastOpening) / (radius + secondMm);
        const angle = angleRad + opening;
        if (angle >= FULL_TURN && angleRad >= Math.PI) proven = radius;
        const next = stepTo(radius, angle, slope - opening / (radius + secondMm)) - CLOSE_MM;
        if (!(next > proven + CLOSE_MM)) break;
        radius = next;
      }
      return proven;
    },
    mostRadius: (counts, guessMm) => {
      const work = string(counts);
      if (work.count < 3) return 0;
      let proven = Infinity;
      let radius = Math.max(guessMm, SMALLEST_MM);
      for (let step = 0; step < MOST_STEPS; step += 1) {
        const { mostMm, mostOpening, chordMm } = distances(radius);
        draw(work, mostMm, radius);
        const { angleRad, slope } = work;
        const opening = (FULL_TURN * mostOpening) / chordMm;
        const angle = angleRad + opening;
        if (angle < FULL_TURN) proven = radius;
        const next = Math.max(SMALLEST_MM, stepTo(radius, angle, slope - opening / chordMm) + CLOSE_MM);
        if (!(next < proven - CLOSE_MM)) break;
        radius = next;
      }
      return proven;
    },
  };
}
