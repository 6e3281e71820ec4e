/**
 * How deep two drawn components overlap, worked out from scratch: each is a rectangle grown by its corner
 * radius, so two of them overlap where the rectangles inside come nearer than the two radii together.
 */
import type { Spot } from '#draw/layout/spot.ts';

type Point = readonly [number, number];

/** Corners of the rectangle inside the rounding. */
function core({ component, xMm, yMm, turnRad }: Spot): Point[] {
  const halfAlong = Math.max(0, component.alongMm / 2 - component.roundingMm);
  const halfAcross = Math.max(0, component.acrossMm / 2 - component.roundingMm);
  const corners: Point[] = [
    [-halfAlong, -halfAcross],
    [halfAlong, -halfAcross],
    [halfAlong, halfAcross],
    [-halfAlong, halfAcross],
  ];
  const cos = Math.cos(turnRad);
  const sin = Math.sin(turnRad);
  return corners.map(([x, y]) => [xMm + x * cos - y * sin, yMm + x * sin + y * cos]);
}

function toSegment([px, py]: Point, [ax, ay]: Point, [bx, by]: Point): number {
  const dx = bx - ax;
  const dy = by - ay;
  const square = dx * dx + dy * dy;
  const share = square === 0 ? 0 : Math.min(1, Math.max(0, ((px - ax) * dx + (py - ay) * dy) / square));
  return Math.hypot(px - ax - share * dx, py - ay - share * dy);
}

/** Depth by which two convex outlines cross: the least overlap over the axes of both (separating axes). */
function crossing(first: readonly Point[], second: readonly Point[]): number {
  let least = Infinity;
  for (const outline of [first, second]) {
    for (const [at, [ax, ay]] of outline.entries()) {
      const [bx, by] = outline[(at + 1) % outline.length] as Point;
      const size = Math.hypot(bx - ax, by - ay);
      if (size < 1e-9) continue;
      const project = ([x, y]: Point): number => (-(by - ay) * x + (bx - ax) * y) / size;
      const one = first.map(project);
      const other = second.map(project);
      least = Math.min(least, Math.max(...one) - Math.min(...other), Math.max(...other) - Math.min(...one));
    }
  }
  return least;
}

/** Millimetres of overlap; negative is the gap between them. */
export function overlapMm(first: Spot, second: Spot): number {
  const one = core(first);
  const other = core(second);
  const reach = first.component.roundingMm + second.component.roundingMm;
  const depth = crossing(one, other);
  if (depth > 0 && depth < Infinity) return depth + reach;
  let apart = Infinity;
  for (const [points, outline] of [
    [one, other],
    [other, one],
  ] as const) {
    for (const point of points) {
      for (const [at, start] of outline.entries()) {
        apart = Math.min(apart, toSegment(point, start, outline[(at + 1) % outline.length] as Point));
      }
    }
  }
  return reach - apart;
}
