/**
 * The closed loop by Newton's method, for tight rings that the fixed-point
 * iteration doesn't settle on.
 *
 * Why that fails: where a chord passes close to the axis, its chord–tangent
 * angles λ are near a right angle, and dλ/dd = (…)/cos λ is huge: the least
 * change of a distance turns the ring by a lot, and the iteration leaps over
 * its fixed point to where the chord crosses the axis, and back. Damping would
 * have to be as small as cos λ. Newton's step divides by that same slope.
 *
 * Unknown are the angle θ of the strand at every part (0 where it is lifted)
 * and the radius a; equations are that the taut loop held at the distances of
 * θ has the angles θ and comes round by 2π. They are smooth as long as the hull
 * keeps its corners; a step that changes them is only taken if it comes nearer
 * (a semismooth Newton method: the corners are its active set). The radius
 * follows the angles, so that every point tried is a closed loop.
 */
import { drawHull } from './hull.ts';
import { setDistances, type Workspace } from './workspace.ts';

const FULL_TURN = 2 * Math.PI;
/** Newton steps; rings take 3 to 10, those that close nowhere end here. */
const MOST_STEPS = 60;
/** A step is halved down to this share of it. */
const LEAST_SHARE = 2 ** -14;
/** Share of the residual taken where no step comes nearer, to get away from there. */
const DAMPING = 0.3;
/** Angles are right when none is off by more, rad. */
const STILL_RAD = 1e-12;
/** And good enough at this where rounding allows no better: close to the axis a bit of a distance is a thousand of an angle. */
const CLOSE_RAD = 1e-9;
/** Steps to close a loop held at its distances. Newton takes some six; halving is always at hand. */
const MOST_CLOSING = 200;
/** The radius is found when it moves by no more than this share of it: the last bit but two. */
const STILL_SHARE = 1e-15;
/** Parts at the most, since the equations are solved densely. Longer strands settle without. */
const MOST_PARTS = 50;
/** How near a part's centre may come to the axis on the way, as a share of half its across. */
const NEAREST = 1e-3;

/** The radius at which the strand closes, its distances held as they are. Below 0 where it passes round no cylinder. */
function closeHeld(work: Workspace, startMm: number): number {
  const { halfAcross, count } = work;
  const least = (NEAREST - 1) * halfAcross.subarray(0, count).reduce((one, other) => Math.min(one, other));
  let radius = Math.max(least, startMm);
  let low = -Infinity;
  let high = Infinity;
  let before = Infinity;
  for (let step = 0; step < MOST_CLOSING; step += 1) {
    drawHull(work, radius);
    const over = work.angleRad - FULL_TURN;
    if (over >= 0) low = radius;
    else high = radius;
    let next = Math.max(least, radius + (over / -work.slope) * (work.angleRad / FULL_TURN));
    // Halved where Newton leaves what is left to search, or doesn't halve what is off.
    if (!(next > low && next < high) || Math.abs(over) > before / 2) {
      if (high === Infinity) next = 2 * Math.abs(radius) + 1;
      else next = low === -Infinity ? least : (low + high) / 2;
    }
    before = Math.abs(over);
    if (Math.abs(next - radius) <= STILL_SHARE * (1 + Math.abs(radius))) break;
    radius = next;
  }
  return radius;
}

type Try = { readonly radiusMm: number; readonly residual: Float64Array; readonly worstRad: number };

/** Closes the loop at the distances of these angles; the residual is by how much its own angles differ. */
function tryAngles(work: Workspace, angles: Float64Array, startMm: number): Try {
  const { count, turn, corner, leftAngle, rightAngle } = work;
  for (let at = 0; at < count; at += 1) turn[at] = (angles[at]! + angles[at + 1 === count ? 0 : at + 1]!) / 2;
  setDistances(work);
  const radiusMm = closeHeld(work, startMm);
  const residual = angles.map((angle) => -angle);
  for (let at = 0; at < work.corners; at += 1) residual[corner[at]!]! += leftAngle[at]! + rightAngle[at]!;
  const worstRad = residual.reduce(
    (most, off) => Math.max(most, Math.abs(off)),
    Math.abs(work.angleRad - FULL_TURN),
  );
  return { radiusMm, residual, worstRad };
}

/** Solves dense equations by elimination with row pivots; `rows` hold the right side last, and are used up. */
function solve(rows: Float64Array[]): Float64Array {
  const count = rows.length;
  for (let pivot = 0; pivot < count; pivot += 1) {
    let best = pivot;
    for (let row = pivot; row < count; row += 1) {
      if (Math.abs(rows[row]![pivot]!) > Math.abs(rows[best]![pivot]!)) best = row;
    }
    [rows[pivot], rows[best]] = [rows[best]!, rows[pivot]!];
    const head = rows[pivot]!;
    for (let row = pivot + 1; row < count; row += 1) {
      const factor = rows[row]![pivot]! / head[pivot]!;
      for (let column = pivot; column <= count; column += 1) rows[row]![column]! -= factor * head[column]!;
    }
  }
  const found = new Float64Array(count);
  for (let row = count - 1; row >= 0; row -= 1) {
    const line = rows[row]!;
    let sum = line[count]!;
    for (let column = row + 1; column < count; column += 1) sum -= line[column]! * found[column]!;
    found[row] = sum / line[row]!;
  }
  return found;
}

/** Newton's step of the angles, from the derivatives of the loop as it was drawn last. */
function newtonStep(work: Workspace, { radiusMm, residual }: Try): Float64Array {
  const { count, corner, corners, halfAcross, arc, leftAngle, rightAngle, straight, rim, turn } = work;
  const rows = Array.from(residual, (off, at) => {
    const row = new Float64Array(count + 2);
    row[at] = 1;
    row[count + 1] = off;
    return row;
  });
  const closing = new Float64Array(count + 2);
  for (let index = 0; index < corners; index += 1) {
    const from = corner[index]!;
    const to = corner[index + 1]!;
    const d = arc[to]! - arc[from]!;
    const r1 = radiusMm + halfAcross[from]!;
    const r2 = radiusMm + halfAcross[to]!;
    // sin λ1 = (d² + r1² − r2²)/(2 d r1) by d and by the radius; λ2 likewise.
    const cos1 = Math.abs(Math.cos(rightAngle[index]!));
    const cos2 = Math.abs(Math.cos(leftAngle[index + 1]!));
    const skew = ((r1 - r2) * (r1 + r2)) / (d * d);
    const byDistance1 = (1 - skew) / (2 * r1 * cos1);
    const byDistance2 = (1 + skew) / (2 * r2 * cos2);
    const byRadius1 = ((r1 - r2) / d - Math.sin(rightAngle[index]!)) / (r1 * cos1);
    const byRadius2 = ((r2 - r1) / d - Math.sin(leftAngle[index + 1]!)) / (r2 * cos2);
    const [row1, row2] = [rows[from]!, rows[to === count ? 0 : to]!];
    for (let at = from; at < to; at += 1) {
      // A junction turns by half the angle at either of its parts.
      const half = turn[at]! / 2;
      const byAngle = (rim[at]! * Math.cos(half) - straight[at]! * Math.sin(half)) / 4;
      for (const part of [at, at + 1 === count ? 0 : at + 1]) {
        row1[part]! -= byDistance1 * byAngle;
        row2[part]! -= byDistance2 * byAngle;
        closing[part]! += (byDistance1 + byDistance2) * byAngle;
      }
    }
    row1[count]! -= byRadius1;
    row2[count]! -= byRadius2;
    closing[count]! += byRadius1 + byRadius2;
  }
  return solve([...rows, closing]).subarray(0, count);
}

/**
 * The radius at which the strand closes, mm; 0 where it was found to close
 * round no cylinder, or not found to close. The state of `work` is that of the answer.
 */
export function closeByNewton(work: Workspace, startMm: number): number {
  const { count } = work;
  if (count > MOST_PARTS) return 0;
  let angles: Float64Array = Float64Array.from(work.turn.subarray(0, count), (turn, at) => {
    return (turn + work.turn[at === 0 ? count - 1 : at - 1]!) / 2;
  });
  let here = tryAngles(work, angles, startMm);
  for (let round = 0; round < MOST_STEPS && here.worstRad > STILL_RAD; round += 1) {
    const step = newtonStep(work, here);
    let next: typeof angles | null = null;
    for (let share = 1; share >= LEAST_SHARE && next === null; share /= 2) {
      const tried = angles.map((angle, at) => angle + share * step[at]!);
      const there = tryAngles(work, tried, here.radiusMm);
      if (there.worstRad < here.worstRad) {
        next = tried;
        here = there;
      }
    }
    if (next === null) {
      if (here.worstRad <= CLOSE_RAD) break;
      next = angles.map((angle, at) => angle + DAMPING * here.residual[at]!);
      here = tryAngles(work, next, here.radiusMm);
    }
    angles = next;
  }
  here = tryAngles(work, angles, here.radiusMm);
  return here.worstRad <= CLOSE_RAD && here.radiusMm > 0 ? here.radiusMm : 0;
}
