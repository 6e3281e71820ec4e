import { describe, expect, test } from 'vitest';
import { solveLoop } from '#core/geometry/loop.ts';
import { loopParts } from '#core/strand/parts.ts';
import { placeLoop } from '#draw/place/loop.ts';
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

  test('neighbours touch and none overlap', () => {
    for (const { design, sequence } of closed) {
      const { spots } = placeLoop(design, sequence);
      for (const [at, spot] of spots.entries()) {
        const next = spots[at + 1];
        if (next === undefined) continue;
        const overlap = overlapMm(spot, next);
        // Core's distance of neighbours lets a sharp fat part and a slim one cross in a sharp turn; in pieces as they are made by less than is seen.
        expect(overlap).toBeLessThan(pieces.includes(design) ? 0.2 : 0.75);
        expect(overlap).toBeGreaterThan(-1.5);
      }
    }
  });

  test('none comes nearer than the cylinder, and those not lifted rest on it', () => {
    for (const { design, sequence } of closed) {
      const { loop, spots, lifted } = placeLoop(design, sequence);
      for (const [at, spot] of spots.entries()) {
        const offMm = Math.hypot(spot.xMm, spot.yMm) - spot.component.acrossMm / 2 - loop.radiusMm;
        expect(offMm).toBeGreaterThan(-0.01);
        if (!lifted.includes(at)) expect(Math.abs(offMm)).toBeLessThan(0.01);
      }
    }
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
