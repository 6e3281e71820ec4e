/**
 * A loop solver of another kind: no hull, no stack. How far out every part lies
 * is free; an interior-point method finds the distances from the axis that
 * bring the strand furthest round the cylinder, each part kept off it by a
 * barrier that is lowered step by step. The turns come from the coordinates
 * that result. Slow and roundabout on purpose.
 */
import type { Part } from '#core/geometry/part.ts';

type Chain = {
  /** Least distance of each part's centre from the axis, mm. */
  readonly least: readonly number[];
  /** Distance of each part from the next, mm. */
  readonly apart: readonly number[];
};

/** Angle at the axis between two parts at r1 and r2 whose centres are d apart: the law of cosines. */
function angleAt(r1: number, r2: number, d: number): number {
  return Math.acos(Math.min(1, Math.max(-1, (r1 * r1 + r2 * r2 - d * d) / (2 * r1 * r2))));
}

function reaches(r1: number, r2: number, d: number): boolean {
  return Math.abs(r1 - r2) < d && r1 + r2 > d;
}

/** What the barrier method climbs: angle round, less what comes of lying close to the cylinder. */
function height(chain: Chain, out: readonly number[], barrier: number): number {
  let sum = 0;
  for (let at = 0; at < out.length; at += 1) {
    const [r1, r2] = [out[at]!, out[(at + 1) % out.length]!];
    const clear = r1 - chain.least[at]!;
    if (!(clear > 0) || !reaches(r1, r2, chain.apart[at]!)) return -Infinity;
    sum += angleAt(r1, r2, chain.apart[at]!) - barrier / clear;
  }
  return sum;
}

/** First and second derivatives of one angle by r1 and r2, the second by differences of the first. */
function slopes(r1: number, r2: number, d: number): [number, number] {
  const cos1 = (r1 * r1 + d * d - r2 * r2) / (2 * r1 * d);
  const cos2 = (r2 * r2 + d * d - r1 * r1) / (2 * r2 * d);
  return [-cos1 / (r1 * Math.sqrt(1 - cos1 * cos1)), -cos2 / (r2 * Math.sqrt(1 - cos2 * cos2))];
}

function curvatures(r1: number, r2: number, d: number): [number, number, number] {
  const h = 1e-5 * Math.min(d - Math.abs(r1 - r2), 1);
  const [a, , b] = [slopes(r1 + h, r2, d), 0, slopes(r1 - h, r2, d)];
  const [p, q] = [slopes(r1, r2 + h, d), slopes(r1, r2 - h, d)];
  return [(a[0] - b[0]) / (2 * h), (p[1] - q[1]) / (2 * h), (p[0] - q[0]) / (2 * h)];
}

/** Solves a symmetric ring of equations (each with its two neighbours) by elimination of a dense matrix. */
function solveRing(diagonal: readonly number[], next: readonly number[], right: readonly number[]): number[] {
  const n = diagonal.length;
  const rows = diagonal.map((value, at) => {
    const row = new Float64Array(n + 1);
    row[at] = value;
    row[(at + 1) % n]! += next[at]!;
    row[(at + n - 1) % n]! += next[(at + n - 1) % n]!;
    row[n] = right[at]!;
    return row;
  });
  for (let pivot = 0; pivot < n; pivot += 1) {
    let best = pivot;
    for (let row = pivot; row < n; row += 1) {
      if (Math.abs(rows[row]![pivot]!) > Math.abs(rows[best]![pivot]!)) best = row;
    }
    [rows[pivot], rows[best]] = [rows[best]!, rows[pivot]!];
    const head = rows[pivot]!;
    for (let row = pivot + 1; row < n; row += 1) {
      const factor = rows[row]![pivot]! / head[pivot]!;
      if (factor === 0) continue;
      for (let column = pivot; column <= n; column += 1) rows[row]![column]! -= factor * head[column]!;
    }
  }
  const answer = new Array<number>(n).fill(0);
  for (let at = n - 1; at >= 0; at -= 1) {
    let sum = rows[at]![n]!;
    for (let column = at + 1; column < n; column += 1) sum -= rows[at]![column]! * answer[column]!;
    answer[at] = sum / rows[at]![at]!;
  }
  return answer;
}

/** One Newton step uphill, shortened until it climbs. Returns how much it gained. */
function climb(chain: Chain, out: number[], barrier: number): number {
  const n = out.length;
  const gradient = out.map((r, at) => barrier / (r - chain.least[at]!) ** 2);
  const diagonal = out.map((r, at) => (-2 * barrier) / (r - chain.least[at]!) ** 3);
  const next = new Array<number>(n).fill(0);
  for (let at = 0; at < n; at += 1) {
    const to = (at + 1) % n;
    const [g1, g2] = slopes(out[at]!, out[to]!, chain.apart[at]!);
    const [c1, c2, c12] = curvatures(out[at]!, out[to]!, chain.apart[at]!);
    gradient[at]! += g1;
    gradient[to]! += g2;
    diagonal[at]! += c1;
    diagonal[to]! += c2;
    next[at] = c12;
  }
  const here = height(chain, out, barrier);
  // Where the hill isn't rounded, steepen the diagonal until the step leads up.
  for (let steep = 0; steep < 1e6; steep = steep === 0 ? 1e-6 : steep * 10) {
    const step = solveRing(
      diagonal.map((value) => value - steep),
      next,
      gradient.map((value) => -value),
    );
    for (let share = 1; share > 1e-6; share /= 2) {
      const moved = out.map((r, at) => r + share * step[at]!);
      const gain = height(chain, moved, barrier) - here;
      if (gain > 0) {
        moved.forEach((r, at) => (out[at] = r));
        return gain;
      }
    }
  }
  return 0;
}

/** Distances from the axis that bring the chain furthest round. */
function furthest(chain: Chain): number[] {
  const start = Math.max(...chain.least) * 1.02 + 1;
  const out = chain.least.map(() => start);
  for (let barrier = 0.02; barrier > 1e-13; barrier /= 8) {
    for (let step = 0; step < 60; step += 1) if (climb(chain, out, barrier) < 1e-13) break;
  }
  return out;
}

/** Turn at every part, from coordinates. */
function cornersOf(chain: Chain, out: readonly number[]): number[] {
  let place = 0;
  const points = out.map((r, at) => {
    const point = [r * Math.cos(place), r * Math.sin(place)] as const;
    place += angleAt(r, out[(at + 1) % out.length]!, chain.apart[at]!);
    return point;
  });
  const n = points.length;
  // The last chord is taken round by the sum of angles, since the chain needn't close yet.
  const turned = (point: readonly [number, number], by: number): [number, number] => [
    point[0] * Math.cos(by) - point[1] * Math.sin(by),
    point[0] * Math.sin(by) + point[1] * Math.cos(by),
  ];
  const at = (index: number): readonly [number, number] =>
    index < 0
      ? turned(points[index + n]!, -place)
      : index >= n
        ? turned(points[index - n]!, place)
        : points[index]!;
  return points.map((_, index) => {
    const [p, q, r] = [at(index - 1), at(index), at(index + 1)];
    const [ux, uy, vx, vy] = [q[0] - p[0], q[1] - p[1], r[0] - q[0], r[1] - q[1]];
    return Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy);
  });
}

/** How far apart two neighbours are when they turn: each a rounded rectangle against the plane halfway between. */
function apartMm(one: Part, other: Part, turn: number): number {
  const along = one.alongMm / 2 + other.alongMm / 2 - one.roundingMm - other.roundingMm;
  const rim = Math.min(one.acrossMm / 2 - one.roundingMm, other.acrossMm / 2 - other.roundingMm);
  return along * Math.cos(turn / 2) + 2 * rim * Math.sin(turn / 2) + one.roundingMm + other.roundingMm;
}

/** Inside radius of a closed strand, mm. */
export function barrierRadius(parts: readonly Part[], startMm: number): number {
  const n = parts.length;
  let turns = parts.map(() => (2 * Math.PI) / n);
  let radius = startMm;
  for (let round = 0; round < 40; round += 1) {
    const apart = parts.map((part, at) => apartMm(part, parts[(at + 1) % n]!, turns[at]!));
    const roundAt = (atRadius: number): { out: number[]; angle: number; chain: Chain } => {
      const chain = { least: parts.map((part) => atRadius + part.acrossMm / 2), apart };
      const out = furthest(chain);
      const angle = out.reduce((sum, r, at) => sum + angleAt(r, out[(at + 1) % n]!, apart[at]!), 0);
      return { out, angle, chain };
    };
    const here = roundAt(radius);
    const there = roundAt(radius * 1.001);
    const step = ((2 * Math.PI - here.angle) * radius * 0.001) / (there.angle - here.angle);
    const corners = cornersOf(here.chain, here.out);
    turns = corners.map((corner, at) => (corner + corners[(at + 1) % n]!) / 2);
    radius += step;
    if (Math.abs(step) < 1e-6) break;
  }
  return radius;
}
