/** Several strands on one clasp, closed: each seen, and joined to what closes them. */
import { expect, it } from 'vitest';
import { placeLoop } from '#draw/layout/loop.ts';
import { placeLoops } from '#draw/layout/loops.ts';
import { design, usualSequences } from '../designs.ts';
import { twoStrands } from '#tests/support/workshop.ts';

const UP_RAD = -Math.PI / 2;
const sequences = usualSequences(twoStrands);
const clasps = (spots: readonly { kind: string }[]) => spots.filter(({ kind }) => kind === 'clasp');

it('side by side each strand is its own loop, moved as a whole; what closes them stands half-way', () => {
  const { loops, insideMm } = placeLoops({ ...twoStrands, lie: 'side-by-side' }, sequences);
  const alone = sequences.map((sequence) => placeLoop(twoStrands, sequence, UP_RAD));
  expect(insideMm).toBeCloseTo(Math.min(...alone.map(({ loop }) => loop.radiusMm)), 9);
  const shifts = loops.map(({ spots }, at) => {
    const by = spots.map((spot, bead) => ({
      xMm: spot.xMm - (alone[at]?.spots[bead]?.xMm ?? NaN),
      yMm: spot.yMm - (alone[at]?.spots[bead]?.yMm ?? NaN),
    }));
    for (const { xMm, yMm } of by) {
      expect(xMm).toBeCloseTo(by[0]?.xMm ?? NaN, 9);
      expect(yMm).toBeCloseTo(by[0]?.yMm ?? NaN, 9);
    }
    return by[0] ?? { xMm: NaN, yMm: NaN };
  });
  expect(shifts[0]).toEqual({ xMm: 0, yMm: 0 });
  expect(Math.hypot(shifts[1]?.xMm ?? 0, shifts[1]?.yMm ?? 0)).toBeGreaterThan(1);
  const [first, second] = loops.map(({ closing }) => closing);
  expect([clasps(first ?? []).length, clasps(second ?? []).length]).toEqual([1, 0]);
  expect(second?.every(({ kind }) => kind === 'wire-loop')).toBe(true);
  const clasp = first?.find(({ kind }) => kind === 'clasp');
  const solo = alone[0]?.closing.find(({ kind }) => kind === 'clasp');
  expect(clasp?.xMm).toBeCloseTo((solo?.xMm ?? NaN) + (shifts[1]?.xMm ?? NaN) / 2, 9);
  expect(clasp?.yMm).toBeCloseTo((solo?.yMm ?? NaN) + (shifts[1]?.yMm ?? NaN) / 2, 9);
});

it('nested strands keep the clasp of the first, and lie within one another', () => {
  const { loops } = placeLoops({ ...twoStrands, lie: 'nested' }, sequences);
  const alone = placeLoop(twoStrands, sequences[0] ?? [], UP_RAD);
  expect(loops[0]?.closing).toEqual(alone.closing);
  const sideways = loops[1]?.spots.map(
    ({ xMm }, bead) => xMm - (placeLoop(twoStrands, sequences[1] ?? [], UP_RAD).spots[bead]?.xMm ?? NaN),
  );
  expect(Math.max(...(sideways ?? [NaN]).map(Math.abs))).toBeLessThan(1e-9);
});

it('of nothing, or of what can’t close, there is no inside', () => {
  expect(placeLoops(design('none', {}), [])).toEqual({ loops: [], insideMm: 0 });
});
