/** Reads back the paths that markers stand on. */

export type Stamped = {
  readonly xMm: number;
  readonly yMm: number;
  /** Direction in which the path comes in; null where the marker stands upright. */
  readonly turnRad: number | null;
};

export type StampPath = {
  readonly places: readonly Stamped[];
  /** The last stretch, which leaves the last place. */
  readonly out: readonly [number, number];
};

const numbers = (text: string): number[] => [...text.matchAll(/-?\d*\.?\d+/g)].map(([one]) => Number(one));

/** Places of a stamping path by SVG 2, "Path data": `M`, then steps by `l` (upright) or `s` (turning), then one more. */
export function readStamps(d: string): StampPath {
  const [, start = '', kind = '', steps = '', end = ''] =
    /^M([^a-z]*)([ls])([^a-z]*)([a-z].*)$/.exec(d) ?? [];
  let [x = NaN, y = NaN] = numbers(start);
  const all = numbers(steps);
  const size = kind === 's' ? 4 : 2;
  const places: Stamped[] = [];
  for (let at = 0; at + size <= all.length; at += size) {
    const step = all.slice(at, at + size);
    const [dx = NaN, dy = NaN] = step.slice(-2);
    const [hx = NaN, hy = NaN] = step;
    x += dx;
    y += dy;
    places.push({ xMm: x, yMm: y, turnRad: kind === 's' ? Math.atan2(dy - hy, dx - hx) : null });
  }
  const [outX = NaN, outY = 0] = numbers(end);
  return { places, out: [outX, outY] };
}

/** All such paths of a drawing. */
export const stampsOf = (svg: string): StampPath[] =>
  [...svg.matchAll(/marker-mid="[^"]+" fill="none" d="([^"]+)"/g)].map(([, d = '']) => readStamps(d));
