/**
 * The radius at which a loaded strand closes.
 *
 * The hull is drawn with the neighbours' distances held (`hull.ts`), the
 * distances are made of the turns (`junction.ts`), and the turns are those of
 * the hull: a fixed point is looked for, turns → distances → hull → turns, at
 * the radius where the strand comes round by 2π. The map is continuous (a part
 * that is just lifted has a corner of 0, so nothing leaps where the hull changes
 * its corners), and turns that aren't negative and add to 2π are a bounded
 * convex set; so if the strand closes at whatever turns it is held, there is a
 * fixed point (Brouwer). That there is no second isn't proven: in 3,000 random
 * rings of three to eight odd parts, searched from 25 starts each, none has two.
 */
import { drawHull } from './hull.ts';
import { farthestTurn } from './junction.ts';
import { closeByNewton } from './newton.ts';
import { setDistances, takeTurns, turnEvenly, type Workspace } from './workspace.ts';

const FULL_TURN = 2 * Math.PI;

/** Rounds of the fixed-point iteration before Newton's method is tried. Strands take 4 to 20; what takes more is a tight ring. */
const MOST_ROUNDS = 60;
/** Turns are still when none moves by more, rad: below 1e-11 mm for the widest bead. */
const STILL_RAD = 1e-13;
/** Turns may be further off by this much for every mm that the radius may: a radian moves a distance by some mm, and few turns move far. */
const STILL_RAD_PER_MM = 0.01;
/** A first guess is never smaller, mm. */
const LEAST_GUESS_MM = 1;

/**
 * Fixed-point iteration on the turns, with Newton on the radius: each round
 * gives new turns, scaled so that they add to a full turn, and a step of the
 * radius.
 * @param stillMm the radius is found when it moves by no more than this and the rounding of as many angles.
 * @returns the radius, mm, or NaN where it doesn't settle on a positive one.
 */
function closeByIteration(work: Workspace, startMm: number, stillMm: number): number {
  let radius = startMm;
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    setDistances(work);
    drawHull(work, radius);
    const change = takeTurns(work, FULL_TURN / work.angleRad);
    // The angle goes roughly as 1/radius, so Newton on its inverse lands closer.
    const step = ((work.angleRad - FULL_TURN) / -work.slope) * (work.angleRad / FULL_TURN);
    radius += step;
    if (!(radius > 0)) return NaN;
    const roundingMm = Number.EPSILON * work.count * radius;
    if (Math.abs(step) <= stillMm + roundingMm && change <= STILL_RAD + STILL_RAD_PER_MM * stillMm)
      return radius;
  }
  return NaN;
}

/**
 * True where a chord is so long that it would have to cross the axis, or so
 * short that it doesn't reach: few long parts, or one far wider than the rest.
 */
function crossesAxis({ leftAngle, rightAngle, corners }: Workspace): boolean {
  for (let at = 0; at < corners; at += 1) {
    if (Math.max(Math.abs(rightAngle[at]!), Math.abs(leftAngle[at]!)) >= Math.PI / 2) return true;
  }
  return false;
}

/** True where the strand doesn't come round even with its parts as far apart as they can be: then it closes at no turns, by (B) of `hull.ts`. */
function neverCloses(work: Workspace): boolean {
  for (let at = 0; at < work.count; at += 1) work.turn[at] = farthestTurn(work, at, 0);
  setDistances(work);
  drawHull(work, 0);
  return work.angleRad < FULL_TURN;
}

/**
 * Radius of the largest cylinder that the loaded strand passes round, mm; 0
 * where it passes round none. The state of `work` is that of the answer.
 *
 * No ring is known that closes and is refused: of 60,000 random ones of three to
 * eight odd parts, none of those refused has a fixed point that Newton's method
 * finds from any of a dozen random starts.
 * @param startMm a guess, or 0 for the usual one.
 * @param stillMm the radius is found when it moves by no more than this.
 */
export function closeLoop(work: Workspace, startMm = 0, stillMm = 1e-12): number {
  const guess =
    startMm > 0 ? startMm : Math.max(LEAST_GUESS_MM, work.lengthMm / FULL_TURN - work.halfAcross[0]! / 2);
  const settled = closeByIteration(work, guess, stillMm);
  if (settled > 0) return crossesAxis(work) ? 0 : settled;
  // From even turns, where rings mostly find their way, then from where the iteration was left.
  const left = work.turn.slice(0, work.count);
  if (neverCloses(work)) return 0;
  turnEvenly(work);
  const even = closeByNewton(work, guess);
  if (even > 0 && !crossesAxis(work)) return even;
  work.turn.set(left);
  const radius = closeByNewton(work, guess);
  return crossesAxis(work) ? 0 : radius;
}
