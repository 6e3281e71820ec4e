/** The radius at which a loaded strand closes. */
import { sweep, takeTurns, type Sweep, type Taut } from './taut.ts';

const FULL_TURN = 2 * Math.PI;

/** Sweeps before the quick way is given up. It needs 4 to 20; what needs more swings to and fro. */
const MOST_QUICK = 60;
/** Sweeps of the slow way; each bisection of the radius takes a few of them. */
const MOST_SETTLE = 200;
/** Bisections: 2⁻⁷⁰ of any radius is below the last bit of it. */
const MOST_BISECTIONS = 70;
/** Turns are still when none moves by more, rad: below 1e-11 mm for the widest bead. */
const STILL_RAD = 1e-13;

/**
 * Newton on the radius while the turns follow: each sweep gives new turns,
 * scaled so that they add to a full turn, and a step of the radius.
 * @returns the radius, mm, or NaN where it doesn't settle on a positive one.
 */
function closeQuickly(taut: Taut, startMm: number, stillMm: number): number {
  const state: Sweep = { angleRad: 0, slope: 0 };
  let radius = startMm;
  for (let round = 0; round < MOST_QUICK; round += 1) {
    sweep(taut, radius, state);
    if (!(state.slope < 0)) return NaN;
    const shift = takeTurns(taut, FULL_TURN / state.angleRad);
    // The angle goes roughly as 1/radius, so Newton on its inverse lands closer.
    const step = ((state.angleRad - FULL_TURN) / -state.slope) * (state.angleRad / FULL_TURN);
    const next = radius + step;
    if (!(next > 0)) return NaN;
    if (Math.abs(step) <= stillMm && shift <= STILL_RAD + stillMm / 100) return next;
    radius = next;
  }
  return NaN;
}

/** The angle at one radius once the turns are still, damped so that it can't swing. */
function settledAngle(taut: Taut, radiusMm: number, state: Sweep): number {
  let before = Infinity;
  let damping = 1;
  for (let round = 0; round < MOST_SETTLE; round += 1) {
    sweep(taut, radiusMm, state);
    const old = taut.turn.slice(0, taut.count);
    const shift = takeTurns(taut, 1);
    if (shift <= STILL_RAD) break;
    if (shift >= before) damping = Math.max(0.1, damping * 0.7);
    if (damping < 1) {
      for (let index = 0; index < taut.count; index += 1) {
        taut.turn[index] = old[index]! + damping * (taut.turn[index]! - old[index]!);
      }
    }
    before = shift;
  }
  return state.angleRad;
}

/** Bisection, since the angle falls as the radius grows: slow, and never lost. */
function closeSlowly(taut: Taut): number {
  const state: Sweep = { angleRad: 0, slope: 0 };
  if (settledAngle(taut, 0, state) < FULL_TURN) return 0;
  let low = 0;
  let high = taut.lengthMm;
  for (let round = 0; round < MOST_BISECTIONS; round += 1) {
    const middle = (low + high) / 2;
    if (settledAngle(taut, middle, state) >= FULL_TURN) low = middle;
    else high = middle;
    if (high - low <= 1e-15 * high) break;
  }
  return (low + high) / 2;
}

/** Angles that ought to agree may differ by this much, rad; the arithmetic's own error is a thousandth of it. */
const AGREE_RAD = 1e-10;

/** True where a chord is so long that it would have to cross the axis: few long parts, or one far wider than the rest. */
function crossesAxis(taut: Taut): boolean {
  for (let index = 0; index < taut.corners; index += 1) {
    if (taut.rightLean[index]! >= Math.PI / 2 || taut.leftLean[index + 1]! >= Math.PI / 2) return true;
  }
  return false;
}

/** Whether the strand comes round at this radius, its turns still. */
function settles(taut: Taut, radiusMm: number): boolean {
  const state: Sweep = { angleRad: 0, slope: 0 };
  sweep(taut, radiusMm, state);
  return Math.abs(state.angleRad - FULL_TURN) <= AGREE_RAD && takeTurns(taut, 1) <= AGREE_RAD;
}

/**
 * Radius of the largest cylinder that the loaded strand passes round, mm; 0
 * where it passes round none. The state of `taut` is that of the answer.
 * @param startMm a guess, or 0 for the usual one.
 * @param stillMm the radius is found when it moves by no more than this.
 */
export function closeTaut(taut: Taut, startMm = 0, stillMm = 1e-12): number {
  const guess = startMm > 0 ? startMm : Math.max(1, taut.lengthMm / FULL_TURN - taut.halfAcross[0]! / 2);
  let radius = closeQuickly(taut, guess, stillMm);
  if (!(radius > 0)) {
    radius = closeSlowly(taut);
    if (!(radius > 0) || !settles(taut, radius)) return 0;
  }
  return crossesAxis(taut) ? 0 : radius;
}
