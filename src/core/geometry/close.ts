/** The radius at which a loaded strand closes. */
import { sweep, takeTurns, turnEvenly, type Taut } from './taut.ts';

const FULL_TURN = 2 * Math.PI;

/**
 * Ways to look for the radius: what share of each step to take, and how many
 * sweeps before it is given up. The whole step needs 4 to 20. Tight rings of few
 * odd parts swing to and fro, and settle the more surely the smaller the share.
 */
const WAYS = [
  [1, 60],
  [0.3, 300],
  [0.05, 1500],
] as const;
/** Sweeps at one radius when bisecting; most need a few. */
const MOST_SETTLE = 200;
/** Bisections: 2⁻⁷⁰ of any radius is below the last bit of it. */
const MOST_BISECTIONS = 70;
/** Turns are still when none moves by more, rad: below 1e-11 mm for the widest bead. */
const STILL_RAD = 1e-13;

/**
 * Newton on the radius while the turns follow: each sweep gives new turns,
 * scaled so that they add to a full turn, and a step of the radius.
 * @param share how much of each step is taken.
 * @returns the radius, mm, or NaN where it doesn't settle on a positive one.
 */
function closeTogether(taut: Taut, startMm: number, stillMm: number, share: number, most: number): number {
  let radius = startMm;
  for (let round = 0; round < most; round += 1) {
    sweep(taut, radius);
    const shift = takeTurns(taut, FULL_TURN / taut.angleRad, share);
    // The angle goes roughly as 1/radius, so Newton on its inverse lands closer.
    const step = ((taut.angleRad - FULL_TURN) / -taut.slope) * (taut.angleRad / FULL_TURN);
    radius += share * step;
    if (!(radius > 0)) return NaN;
    if (Math.abs(step) <= stillMm && shift <= STILL_RAD + stillMm / 100) return radius;
  }
  return NaN;
}

/** The angle at one radius once the turns are still, damped so that it can't swing. */
function settledAngle(taut: Taut, radiusMm: number): number {
  let before = Infinity;
  let share = 1;
  for (let round = 0; round < MOST_SETTLE; round += 1) {
    sweep(taut, radiusMm);
    const shift = takeTurns(taut, 1, share);
    if (shift <= STILL_RAD) break;
    if (shift >= before) share = Math.max(0.1, share * 0.7);
    before = shift;
  }
  return taut.angleRad;
}

/** Bisection, since the angle falls as the radius grows: slow, and never lost. */
function closeSlowly(taut: Taut): number {
  if (settledAngle(taut, 0) < FULL_TURN) return 0;
  let low = 0;
  let high = taut.lengthMm;
  for (let round = 0; round < MOST_BISECTIONS; round += 1) {
    const middle = (low + high) / 2;
    if (settledAngle(taut, middle) >= FULL_TURN) low = middle;
    else high = middle;
    if (high - low <= 1e-15 * high) break;
  }
  return (low + high) / 2;
}

/** Angles that ought to agree may differ by this much, rad; the arithmetic's own error is a thousandth of it. */
const AGREE_RAD = 1e-10;

/**
 * True where a chord is so long that it would have to cross the axis: few long
 * parts, or one far wider than the rest. It leans so at both of its ends or at none.
 */
function crossesAxis(taut: Taut): boolean {
  return taut.rightLean.subarray(0, taut.corners).some((lean) => lean >= Math.PI / 2);
}

/** Whether the last sweep came round, its turns still: those of a swing may add up by chance. */
function settles(taut: Taut): boolean {
  return Math.abs(taut.angleRad - FULL_TURN) <= AGREE_RAD && takeTurns(taut, 1, 1) <= AGREE_RAD;
}

/**
 * Radius of the largest cylinder that the loaded strand passes round, mm; 0
 * where it passes round none. The state of `taut` is that of the answer.
 *
 * Of random rings of three to eight odd parts one in two thousand comes to rest
 * by no way that is tried here, though it has a radius: it counts as passing
 * round nothing. Of strands of thirty parts and more none was ever seen to.
 * @param startMm a guess, or 0 for the usual one.
 * @param stillMm the radius is found when it moves by no more than this.
 */
export function closeTaut(taut: Taut, startMm = 0, stillMm = 1e-12): number {
  const guess = startMm > 0 ? startMm : Math.max(1, taut.lengthMm / FULL_TURN - taut.halfAcross[0]! / 2);
  for (const [share, most] of WAYS) {
    const radius = closeTogether(taut, guess, stillMm, share, most);
    if (radius > 0) return crossesAxis(taut) ? 0 : radius;
    turnEvenly(taut);
  }
  const radius = closeSlowly(taut);
  return settles(taut) && !crossesAxis(taut) ? radius : 0;
}
