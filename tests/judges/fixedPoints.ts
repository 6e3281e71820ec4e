/**
 * The loops that a ring of few parts can close to, by brute force: the turns
 * that a strand held at them has again are looked for from random starts, by
 * Newton's method with differences for derivatives. The hull is taken of all
 * triples of parts, the radius by bisection. Slow and roundabout on purpose.
 */
import type { Part } from '#core/geometry/part.ts';
import { leastDistanceMm } from '#core/verify/loop.ts';
import type { Random } from '../core/random.ts';

const FULL_TURN = 2 * Math.PI;

type Held = { readonly radiusMm: number; readonly turns: readonly number[]; readonly crosses: boolean };

const arcsine = (sine: number): number => Math.asin(Math.max(-1, Math.min(1, sine)));

/** Chord–tangent angle at the first of two centres, by the law of cosines; beyond a right angle where it can't reach. */
const sineAt = (r1: number, r2: number, d: number): number => (d * d + r1 * r1 - r2 * r2) / (2 * d * r1);

/** Parts of a strand that begins and ends at one which touch: those above no straight line between two others. */
function corners(along: readonly number[], outer: readonly number[]): number[] {
  const height = outer.map((r, at) => r * r - along[at]! ** 2);
  const below = (at: number): boolean => {
    for (let left = 0; left < at; left += 1) {
      for (let right = at + 1; right < along.length; right += 1) {
        const share = (along[at]! - along[left]!) / (along[right]! - along[left]!);
        if (height[at]! < height[left]! + share * (height[right]! - height[left]!)) return true;
      }
    }
    return false;
  };
  return along.map((_, at) => at).filter((at) => at === 0 || at === along.length - 1 || !below(at));
}

/** Angles at the corners of the strand round a cylinder, and their sum; it begins at its widest part. */
function anglesAt(parts: readonly Part[], apart: readonly number[], radiusMm: number) {
  const count = parts.length;
  const outer = [...parts, parts[0]!].map((part) => radiusMm + part.acrossMm / 2);
  const along = [0];
  for (const d of apart) along.push(along.at(-1)! + d);
  const angles = new Array<number>(count).fill(0);
  let crosses = false;
  const touching = corners(along, outer);
  touching.slice(1).forEach((to, index) => {
    const from = touching[index]!;
    const d = along[to]! - along[from]!;
    const [one, other] = [sineAt(outer[from]!, outer[to]!, d), sineAt(outer[to]!, outer[from]!, d)];
    if (Math.max(Math.abs(one), Math.abs(other)) >= 1) crosses = true;
    angles[from]! += arcsine(one);
    angles[to % count]! += arcsine(other);
  });
  return { angles, crosses, sum: angles.reduce((all, angle) => all + angle, 0) };
}

/** Closes a ring held at these turns; null where it passes round nothing. */
function hold(parts: readonly Part[], turns: readonly number[]): Held | null {
  const apart = parts.map((part, at) => leastDistanceMm(part, parts[(at + 1) % parts.length]!, turns[at]!));
  if (apart.some((d) => !(d > 0)) || anglesAt(parts, apart, 0).sum < FULL_TURN) return null;
  let low = 0;
  let high = apart.reduce((sum, d) => sum + d, 0);
  while (high - low > 1e-15 * high) {
    const middle = (low + high) / 2;
    if (middle === low || middle === high) break;
    if (anglesAt(parts, apart, middle).sum >= FULL_TURN) low = middle;
    else high = middle;
  }
  const { angles, crosses } = anglesAt(parts, apart, low);
  return {
    radiusMm: low,
    turns: angles.map((angle, at) => (angle + angles[(at + 1) % angles.length]!) / 2),
    crosses,
  };
}

const worst = (values: readonly number[]): number => Math.max(...values.map(Math.abs));

/** Solves equations by elimination; null where they don't tell. */
function solve(rows: readonly (readonly number[])[], right: readonly number[]): number[] | null {
  const work = rows.map((row, at) => [...row, right[at]!]);
  for (let pivot = 0; pivot < work.length; pivot += 1) {
    const best = work.reduce(
      (found, row, at) => (at > pivot && Math.abs(row[pivot]!) > Math.abs(work[found]![pivot]!) ? at : found),
      pivot,
    );
    [work[pivot], work[best]] = [work[best]!, work[pivot]!];
    if (Math.abs(work[pivot]![pivot]!) < 1e-14) return null;
    work.forEach((row, at) => {
      if (at === pivot) return;
      const factor = row[pivot]! / work[pivot]![pivot]!;
      work[at] = row.map((value, column) => value - factor * work[pivot]![column]!);
    });
  }
  return work.map((row, at) => row.at(-1)! / row[at]!);
}

/** One step towards turns that are kept: Newton's where that comes nearer, else a share of the way. */
function step(parts: readonly Part[], turns: readonly number[], held: Held): number[] {
  const off = held.turns.map((turn, at) => turn - turns[at]!);
  const moved = turns.map((_, at) =>
    hold(
      parts,
      turns.map((turn, other) => (other === at ? turn + 1e-7 : turn)),
    ),
  );
  const rows = turns.map((_, row) =>
    moved.map((there, column) =>
      there === null ? NaN : (there.turns[row]! - held.turns[row]!) / 1e-7 - (row === column ? 1 : 0),
    ),
  );
  const newton = solve(
    rows,
    off.map((value) => -value),
  );
  for (let share = 1; newton !== null && share > 1e-3; share /= 2) {
    const tried = turns.map((turn, at) => Math.max(0, Math.min(Math.PI, turn + share * newton[at]!)));
    const there = hold(parts, tried);
    if (there !== null && worst(there.turns.map((turn, at) => turn - tried[at]!)) < worst(off)) return tried;
  }
  return turns.map((turn, at) => turn + 0.3 * off[at]!);
}

/** Radii of the loops that a ring closes to, found from so many starts, mm. */
export function closingRadii(ring: readonly Part[], of: Random, starts: number): number[] {
  const widest = ring.reduce((best, part, at) => (part.acrossMm > ring[best]!.acrossMm ? at : best), 0);
  const parts = [...ring.slice(widest), ...ring.slice(0, widest)];
  const found: number[] = [];
  for (let start = 0; start < starts; start += 1) {
    const weights = parts.map(() => (start === 0 ? 1 : -Math.log(1 - 0.999 * of.next())));
    const whole = weights.reduce((sum, weight) => sum + weight, 0);
    let turns = weights.map((weight) => Math.min(Math.PI, (FULL_TURN * weight) / whole));
    for (let round = 0; round < 60; round += 1) {
      const held = hold(parts, turns);
      if (held === null) break;
      if (worst(held.turns.map((turn, at) => turn - turns[at]!)) < 1e-10) {
        const known = found.some((radiusMm) => Math.abs(radiusMm - held.radiusMm) < 1e-6);
        if (!held.crosses && !known) found.push(held.radiusMm);
        break;
      }
      turns = step(parts, turns, held);
    }
  }
  return found;
}
