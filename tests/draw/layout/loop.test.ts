import { describe, expect, test } from 'vitest';
import { solveLoop } from '#core/geometry/loop.ts';
import { loopParts } from '#core/design/loopParts.ts';
import { placeLoop } from '#draw/layout/loop.ts';
import { pieces, usualSequences } from '../designs.ts';
import { overlapMm } from '../overlap.ts';
import { randomDesign } from '../random.ts';

const designs = [...pieces, ...Array.from({ length: 100 }, (_, seed) => randomDesign(seed))];
const strands = designs.flatMap((design) => usualSequences(design).map((sequence) => ({ design, sequence })));
const closed = strands.filter(({ design, sequence }) => solveLoop(loopParts(design, sequence)).closes);

describe('a strand closed round the wrist', () => {
  test('most of the random strands close, so the rest of this file says something', () => {
    expect(closed.length).toBeGreaterThan(100);
  });

  test.each([
    // Core's distance of neighbours lets a sharp fat part and a slim one cross in a sharp turn:
    // in pieces as they are made by less than is seen.
    ['pieces as they are made', true, 0.2],
    ['any shapes in any order', false, 0.75],
  ] as const)(
    '%s: neighbours touch, and none reaches into the next by more than its corners may',
    (_, made, mostMm) => {
      const of = closed.filter(({ design }) => pieces.includes(design) === made);
      const overlaps = of.flatMap(({ design, sequence }) => {
        const { spots } = placeLoop(design, sequence);
        return spots.slice(1).map((next, at) => overlapMm(spots[at] ?? next, next));
      });
      expect(overlaps.length).toBeGreaterThan(200);
      expect(Math.max(...overlaps)).toBeLessThan(mostMm);
      expect(Math.min(...overlaps)).toBeGreaterThan(-1.5);
    },
  );

  test('none comes nearer than the cylinder, and those not lifted rest on it', () => {
    const off = closed.flatMap(({ design, sequence }) => {
      const { loop, spots, lifted } = placeLoop(design, sequence);
      return spots.map((spot, at) => ({
        mm: Math.hypot(spot.xMm, spot.yMm) - spot.component.acrossMm / 2 - loop.radiusMm,
        rests: !lifted.includes(at),
      }));
    });
    expect(Math.min(...off.map(({ mm }) => mm))).toBeGreaterThan(-0.01);
    const resting = off.filter(({ rests }) => rests).map(({ mm }) => Math.abs(mm));
    expect(resting.length).toBeGreaterThan(200);
    expect(Math.max(...resting)).toBeLessThan(0.01);
  });

  test('beads beside a fat one are seen lifted', () => {
    const focal = pieces.find(({ id }) => id === 'focal');
    if (focal === undefined) throw new Error('no focal piece');
    const [sequence = []] = usualSequences(focal);
    const { loop, spots, lifted } = placeLoop(focal, sequence);
    const middle = spots.findIndex((spot) => spot.component.acrossMm === 22);
    expect(lifted).not.toContain(middle);
    expect(lifted).toContain(middle - 1);
    const beside = spots[middle - 1];
    if (beside === undefined) throw new Error('nothing beside the focal');
    expect(Math.hypot(beside.xMm, beside.yMm)).toBeGreaterThan(
      loop.radiusMm + beside.component.acrossMm / 2 + 1,
    );
  });

  test('its middle is on top, its clasp below, and it runs clockwise from the clasp', () => {
    const [balls] = pieces;
    if (balls === undefined) throw new Error('no piece');
    const [sequence = []] = usualSequences(balls);
    const { spots, closing } = placeLoop(balls, sequence);
    const middle = spots[(spots.length - 1) / 2];
    expect(Math.abs(middle?.xMm ?? NaN)).toBeLessThan(0.01);
    expect(middle?.yMm).toBeLessThan(0);
    expect(spots[0]?.xMm).toBeLessThan(0);
    expect(spots.at(-1)?.xMm).toBeGreaterThan(0);
    expect(closing.find(({ kind }) => kind === 'clasp')?.yMm).toBeGreaterThan(0);
  });

  test('a strand that can close round nothing is drawn as nothing, not as nonsense', () => {
    const [balls] = pieces;
    if (balls === undefined) throw new Error('no piece');
    const bare = { ...balls, ends: { ...balls.ends, ring: null, loopMm: 0 } };
    const placed = placeLoop(bare, []);
    expect(placed.spots).toEqual([]);
    expect(placed.closing).toEqual([]);
  });
});
