import { expect, test } from 'vitest';
import { stampAt, stanceOf, writeMarker, type Place } from '#draw/paint/ink/stamp.ts';
import { stampsOf } from '../stamps.ts';

const turned: Place[] = Array.from({ length: 9 }, (_, at) => ({
  xMm: 60 * Math.cos(at * 0.7),
  yMm: 60 * Math.sin(at * 0.7),
  turnRad: at * 0.7 + Math.PI / 2,
}));

test('a turning path has an inner vertex at every place, entered and left in its direction', () => {
  const [path] = stampsOf(stampAt('url(#m)', turned, stanceOf(turned)));
  expect(path?.places.length).toBe(turned.length);
  for (const [at, place] of turned.entries()) {
    const read = path?.places[at];
    expect(read?.xMm).toBeCloseTo(place.xMm, 1);
    expect(read?.yMm).toBeCloseTo(place.yMm, 1);
    // SVG 2, "Cubic Bézier curve commands": s starts with the last handle mirrored, so in is out.
    const turn = (read?.turnRad ?? NaN) - place.turnRad;
    expect(Math.abs(Math.sin(turn))).toBeLessThan(0.005);
    expect(Math.cos(turn)).toBeGreaterThan(0);
  }
  // The way out of the last vertex is a line of its own.
  const [dx = NaN, dy = NaN] = path?.out ?? [];
  expect(Math.atan2(dy, dx)).toBeCloseTo(Math.atan2(Math.sin(7.171), Math.cos(7.171)), 1);
});

test('rounding doesn’t add up along a strand', () => {
  const many = Array.from({ length: 2000 }, (_, at) => ({
    xMm: at * 1.0049,
    yMm: at * 0.3351,
    turnRad: 0.3,
  }));
  for (const places of [many, many.map((place) => ({ ...place, turnRad: 0 }))]) {
    const read = stampsOf(stampAt('url(#m)', places, stanceOf(places)))[0]?.places ?? [];
    expect(read.length).toBe(2000);
    for (const [at, place] of places.entries()) {
      expect(Math.abs((read[at]?.xMm ?? NaN) - place.xMm)).toBeLessThan(0.0051);
      expect(Math.abs((read[at]?.yMm ?? NaN) - place.yMm)).toBeLessThan(0.0051);
    }
  }
});

test('what stands upright needs only its places', () => {
  const rows = [0, 12.5, 20].flatMap((xMm) => [{ xMm, yMm: 3, turnRad: 0 }]);
  const places = [...rows, { xMm: 4, yMm: 9.25, turnRad: 0 }];
  expect(stanceOf(places)).toBe('upright');
  const markup = stampAt('url(#m)', places, 'upright');
  expect(markup).toBe('<path marker-mid="url(#m)" fill="none" d="M0 0l0 3 12.5 0 7.5 0-16 6.25h1"/>');
  expect(stampsOf(markup)[0]?.places).toEqual(places.map(({ xMm, yMm }) => ({ xMm, yMm, turnRad: null })));
});

test('a marker is whole beyond its own box, and turns only where asked', () => {
  expect(writeMarker('m', 'turning', '<g/>')).toBe(
    '<marker id="m" overflow="visible" orient="auto"><g/></marker>',
  );
  expect(writeMarker('m', 'upright', '<g/>')).not.toContain('orient');
});
