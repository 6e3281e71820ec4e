import { pair } from '../../svg/text.ts';
import { pathMark, type Shaper } from './form.ts';

/** Corners of a tumbled chip. */
const CORNERS = 7;

/** A tumbled bit of stone: no two alike, all within the same measures. */
export const chip: Shaper = ({ alongMm, acrossMm }, random) => {
  const points: [number, number][] = [];
  for (let corner = 0; corner < CORNERS; corner += 1) {
    const angle = ((corner + 0.5 * random()) / CORNERS) * 2 * Math.PI;
    const reach = 0.68 + 0.32 * random();
    points.push([Math.cos(angle) * reach, Math.sin(angle) * reach]);
  }
  const outline = pathMark(smooth(stretched(points, alongMm, acrossMm)));
  return { outline, surfaces: [{ mark: outline, lie: 'ball' }], lines: [], gloss: 'ball' };
};

/** The points pulled so that they just fill the component's own box. */
function stretched(
  points: readonly [number, number][],
  alongMm: number,
  acrossMm: number,
): [number, number][] {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  const fit = (value: number, all: readonly number[], size: number): number =>
    ((value - Math.min(...all)) / (Math.max(...all) - Math.min(...all)) - 0.5) * size;
  return points.map(([x, y]) => [fit(x, xs, alongMm), fit(y, ys, acrossMm)]);
}

/** A closed line through the middles of the edges, rounded at the corners: never outside the corners. */
function smooth(points: readonly [number, number][]): string {
  const middle = (at: number): [number, number] => {
    const [x, y] = points[at % points.length] ?? [0, 0];
    const [nextX, nextY] = points[(at + 1) % points.length] ?? [0, 0];
    return [(x + nextX) / 2, (y + nextY) / 2];
  };
  let d = `M${pair(...middle(points.length - 1))}`;
  for (const [at, [x, y]] of points.entries()) d += `Q${pair(x, y)} ${pair(...middle(at))}`;
  return `${d}Z`;
}
