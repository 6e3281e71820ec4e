import { expect, test } from 'vitest';
import { stampAt, stanceOf, writeMarker, type Place } from '#draw/paint/stamp.ts';

/** The path's numbers, command by command. */
function commands(markup: string): [string, number[]][] {
  const d = / d="([^"]+)"/.exec(markup)?.[1] ?? '';
  return [...d.matchAll(/([A-Za-z])([^A-Za-z]*)/g)].map(([, letter = '', rest = '']) => [
    letter,
    [...rest.matchAll(/-?[\d.]+/g)].map(Number),
  ]);
}

const turned: Place[] = Array.from({ length: 9 }, (_, at) => ({
  xMm: 60 * Math.cos(at * 0.7),
  yMm: 60 * Math.sin(at * 0.7),
  turnRad: at * 0.7 + Math.PI / 2,
}));

test('a turning path has an inner vertex at every place, entered and left in its direction', () => {
  const [start, ...rest] = commands(stampAt('url(#m)', turned, stanceOf(turned)));
  const curves = rest.slice(0, -1);
  expect(start?.[0]).toBe('M');
  expect(curves.map(([letter]) => letter)).toEqual(turned.map(() => 'S'));
  for (const [at, [, numbers]] of curves.entries()) {
    const [handleX = NaN, handleY = NaN, x = NaN, y = NaN] = numbers;
    const place = turned[at];
    expect(x).toBeCloseTo(place?.xMm ?? NaN, 1);
    expect(y).toBeCloseTo(place?.yMm ?? NaN, 1);
    // SVG 2, "Cubic Bézier curve commands": S starts with the last handle mirrored, so in is out.
    const turn = Math.atan2(y - handleY, x - handleX) - (place?.turnRad ?? NaN);
    expect(Math.abs(Math.sin(turn))).toBeLessThan(0.005);
    expect(Math.cos(turn)).toBeGreaterThan(0);
  }
  // The way out of the last vertex is a line of its own.
  const [letter, [dx = NaN, dy = NaN] = []] = rest.at(-1) ?? [];
  expect(letter).toBe('l');
  expect(Math.atan2(dy, dx)).toBeCloseTo(Math.atan2(Math.sin(7.171), Math.cos(7.171)), 1);
});

test('what stands upright needs only its places, rows told apart', () => {
  const rows = [0, 12.5, 20].flatMap((xMm) => [{ xMm, yMm: 3, turnRad: 0 }]);
  const places = [...rows, { xMm: 4, yMm: 9.25, turnRad: 0 }];
  expect(stanceOf(places)).toBe('upright');
  expect(commands(stampAt('url(#m)', places, 'upright'))).toEqual([
    ['M', [0, 0]],
    ['L', [0, 3]],
    ['H', [12.5]],
    ['H', [20]],
    ['L', [4, 9.25]],
    ['h', [1]],
  ]);
});

test('a marker is in millimetres, whole beyond its own box, and turns only where asked', () => {
  expect(writeMarker('m', 'turning', '<g/>')).toBe(
    '<marker id="m" markerUnits="userSpaceOnUse" overflow="visible" orient="auto"><g/></marker>',
  );
  expect(writeMarker('m', 'upright', '<g/>')).not.toContain('orient');
});
