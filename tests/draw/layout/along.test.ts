import { describe, expect, test } from 'vitest';
import { hang } from '#core/body/hanging.ts';
import { placeAlong, turnBetween } from '#draw/layout/along.ts';
import { arc, joined, line, type Curve } from '#draw/layout/curve.ts';
import { hanging } from '#draw/layout/hanging.ts';
import { toParts } from '#draw/layout/spot.ts';
import { lengthOf } from '#draw/layout/straight.ts';
import { COMPONENTS } from '../components.ts';
import { usualSequences } from '../designs.ts';
import { overlapMm } from '../overlap.ts';
import { randomDesign } from '../random.ts';

/** Length of a curve by adding up short chords, sharing nothing with how it was made. */
function chordSum(curve: Curve, steps = 20_000): number {
  let sum = 0;
  let last = curve.at(0);
  for (let step = 1; step <= steps; step += 1) {
    const next = curve.at((curve.lengthMm * step) / steps);
    sum += Math.hypot(next.xMm - last.xMm, next.yMm - last.yMm);
    last = next;
  }
  return sum;
}

function hungCurve(lengthMm: number, spanMm: number, pendantMm: number): Curve {
  const hung = hang(lengthMm, spanMm, pendantMm);
  if (hung === null) throw new Error('does not hang');
  return hanging(hung, lengthMm);
}

const curves: readonly (readonly [string, Curve])[] = [
  ['a catenary', hungCurve(430, 190, 0)],
  ['a catenary with a pendant', hungCurve(430, 190, 60)],
  ['two straight sides, the strand weighing nothing', hungCurve(430, 190, Infinity)],
  ['a circle', arc(0, 0, 70, 2, 2 * Math.PI)],
  [
    'a board groove',
    joined([
      line(-55, -150, Math.PI / 2, 150),
      arc(0, 0, 55, Math.PI, -Math.PI),
      line(55, 0, -Math.PI / 2, 150),
    ]),
  ],
];

describe.each(curves)('%s', (_, curve) => {
  test('is as long as it says', () => {
    expect(chordSum(curve)).toBeCloseTo(curve.lengthMm, 3);
  });

  test('points the way it goes', () => {
    for (let at = 0.013; at < 1; at += 0.0371) {
      const here = curve.at(at * curve.lengthMm);
      const on = curve.at(at * curve.lengthMm + 1e-5);
      const went = Math.atan2(on.yMm - here.yMm, on.xMm - here.xMm);
      expect(Math.abs(turnBetween(went, here.turnRad))).toBeLessThan(1e-3);
    }
  });

  test('carries small beads whose lengths add up to the strand', () => {
    const bead = COMPONENTS['silver-4'];
    if (bead === undefined) throw new Error('no small ball');
    const many = Array.from({ length: 41 }, () => ({ component: bead, section: 's', side: 'left' as const }));
    const laid = placeAlong(toParts(many), curve, curve.lengthMm / 2);
    // Straight from centre to centre, so a hair less than the curve between them; at a kink a little more.
    expect(Math.abs(laid.toMm - laid.fromMm - lengthOf(toParts(many)))).toBeLessThan(1);
  });
});

/** The wide catenary once more by its textbook form, y = h·cosh(x/h): what the curve itself doesn't use. */
function offCatenary(lengthMm: number, spanMm: number): (xMm: number, yMm: number) => number {
  const hung = hang(lengthMm, spanMm, 0);
  if (hung === null) throw new Error('does not hang');
  const { hMm, sagMm } = hung;
  return (xMm, yMm) => {
    const onMm = sagMm - hMm * (Math.cosh(xMm / hMm) - 1);
    return Math.abs(yMm - onMm) / Math.cosh(xMm / hMm);
  };
}

/** Bends gentler than any bead is long, as every line a strand is laid on is; and how far a point is off each. */
const gentle: readonly (readonly [string, Curve, (xMm: number, yMm: number) => number])[] = [
  ['a wide catenary', hungCurve(2600, 1900, 0), offCatenary(2600, 1900)],
  ['a wide circle', arc(0, 0, 400, 2, 2 * Math.PI), (xMm, yMm) => Math.abs(Math.hypot(xMm, yMm) - 400)],
];

describe.each(gentle)('a hundred random strands on %s', (_, curve, offMm) => {
  const laid = Array.from({ length: 100 }, (_, seed) => {
    const [sequence = []] = usualSequences(randomDesign(seed));
    return placeAlong(toParts(sequence), curve, curve.lengthMm / 2).spots;
  });
  const pairs = laid.flatMap((spots) => spots.slice(1).map((next, at) => [spots[at], next] as const));
  const overlaps = pairs.map(([spot, next]) => (spot === undefined ? NaN : overlapMm(spot, next)));

  test('lie with every centre on it', () => {
    const off = laid.flat().map(({ xMm, yMm }) => offMm(xMm, yMm));
    expect(off.length).toBeGreaterThan(2000);
    expect(Math.max(...off)).toBeLessThan(0.01);
  });

  test('touch their neighbours and overlap none by a fiftieth of a millimetre', () => {
    expect(Math.max(...overlaps)).toBeLessThan(0.02);
    expect(Math.min(...overlaps)).toBeGreaterThan(-1);
  });
});
