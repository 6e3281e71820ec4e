/** What hangs from a closed piece: an extender's chain from its ring, a pendant from its middle. */
import { expect, it } from 'vitest';
import { withEnds, withHanging } from '#core/design/swap.ts';
import { drawLoop } from '#draw/drawings/loop.ts';
import { placeLoops } from '#draw/layout/loops.ts';
import { focalBracelet, pendantNecklace } from '#tests/support/workshop.ts';
import { usualSequences } from '../designs.ts';

const caption = { title: 'piece', description: 'closed', idPrefix: 'closed' };

/** The view box, mm. */
function boxOf(svg: string): { left: number; top: number; right: number; bottom: number } {
  const [x = NaN, y = NaN, width = NaN, height = NaN] = (/viewBox="([^"]+)"/.exec(svg)?.[1] ?? '')
    .split(' ')
    .map(Number);
  return { left: x, top: y, right: x + width, bottom: y + height };
}

it('a chain stands straight out from its ring, clear of the round, and inside the picture', () => {
  const chained = withEnds(focalBracelet, { extenderMm: 40 });
  const sequences = usualSequences(chained);
  const { loops, insideMm } = placeLoops(chained, sequences);
  const closing = loops[0]?.closing ?? [];
  const chain = closing.find(({ kind }) => kind === 'chain');
  const ring = closing.find(({ kind }) => kind === 'ring');
  if (chain === undefined || ring === undefined) throw new Error('expected a chain and a ring');
  const [chainOut, ringOut] = [chain, ring].map(({ xMm, yMm }) => Math.hypot(xMm, yMm));
  // On one ray from the middle: the chain's inner end is the ring's outer edge.
  expect(Math.atan2(chain.yMm, chain.xMm)).toBeCloseTo(Math.atan2(ring.yMm, ring.xMm), 9);
  expect((chainOut ?? NaN) - 20).toBeCloseTo((ringOut ?? NaN) + ring.alongMm / 2, 9);
  expect((chainOut ?? NaN) - 20).toBeGreaterThan(insideMm);
  const box = boxOf(drawLoop(chained, sequences, caption));
  for (const end of [-20, 20]) {
    const share = ((chainOut ?? NaN) + end) / (chainOut ?? NaN);
    expect(chain.xMm * share).toBeGreaterThan(box.left);
    expect(chain.xMm * share).toBeLessThan(box.right);
    expect(chain.yMm * share).toBeGreaterThan(box.top);
    expect(chain.yMm * share).toBeLessThan(box.bottom);
  }
});

it('the round is the same with a chain as without', () => {
  const sequences = usualSequences(focalBracelet);
  const chained = withEnds(focalBracelet, { extenderMm: 40 });
  const bare = placeLoops(focalBracelet, sequences);
  const hung = placeLoops(chained, sequences);
  expect(hung.insideMm).toBe(bare.insideMm);
  expect(hung.loops[0]?.spots).toEqual(bare.loops[0]?.spots);
});

it('a pendant hangs its whole length below the lowest bead, and the picture holds it', () => {
  const sequences = usualSequences(pendantNecklace);
  const { hanging, components } = pendantNecklace;
  if (hanging === null) throw new Error('expected a pendant');
  const rings = hanging.rings.reduce((sum, id) => sum + (components[id]?.alongMm ?? NaN), 0);
  const hangMm = rings + (components[hanging.pendant]?.hangMm ?? NaN);
  const [placed] = placeLoops(pendantNecklace, sequences).loops;
  const lowest = Math.max(...(placed?.spots ?? []).map(({ yMm }) => yMm));
  const withIt = boxOf(drawLoop(pendantNecklace, sequences, caption));
  expect(withIt.bottom).toBeCloseTo(lowest + hangMm + 3, 1);
  const without = boxOf(drawLoop(withHanging(pendantNecklace, null), sequences, caption));
  expect(without.bottom).toBeLessThan(withIt.bottom);
  expect(without.right - without.left).toBeCloseTo(withIt.right - withIt.left, 1);
});
