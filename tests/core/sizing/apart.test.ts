/** Strands of one piece that can't be brought to one size, and what keeps them apart. */
import { expect, test } from 'vitest';
import type { Design, Strand } from '#core/design/design.ts';
import { range } from '#core/sizing/range.ts';
import { size } from '#core/sizing/size.ts';
import { twoStrands } from '#tests/support/workshop.ts';
import { rules, stocked } from '../designs.ts';

const [upper, lower] = twoStrands.strands as readonly [Strand, Strand];

/** A strand whose sections go from so few repeats to so many. */
const between = (of: Strand, fewest: number, most: number): Strand => ({
  ...of,
  sections: of.sections.map((section) => ({ ...section, usual: fewest, fewest, most })),
});

const piece = (...strands: Strand[]): Design => ({ ...twoStrands, strands });

test('strands that no size suits', () => {
  const apart = piece(between(upper, 10, 12), between(lower, 8, 9));
  expect(range(piece(between(upper, 10, 12), between(lower, 22, 26)), rules)).toMatchObject({
    status: 'known',
  });
  const known = range(apart, rules);
  if (known.status !== 'refused' || known.problem.code !== 'strands-apart') throw new Error(known.status);
  expect(known.problem.leastMm - known.problem.mostMm).toBeGreaterThan(2 * rules.toleranceMm.bracelet);
  expect(known.problem.short).toEqual([]);
  const choice = {
    measure: { of: 'wrist', mm: 165 },
    sit: 'easy',
    hand: 'left',
    pick: 'best',
    quantity: 1,
  } as const;
  expect(size(apart, rules, 4800, choice)).toEqual({ status: 'refused', problem: known.problem });
});

test('where more of a bead that runs out would not bring them together, it isn’t blamed', () => {
  const counted = stocked(piece(between(upper, 10, 12), between(lower, 8, 9)), { 'ball-4': 17 });
  expect(range(counted, rules)).toMatchObject({ problem: { code: 'strands-apart', short: [] } });
});

test('where only the stock keeps them apart, the bead that is short is named', () => {
  const free = piece(between(upper, 10, 12), between(lower, 8, 26));
  expect(range(free, rules)).toMatchObject({ status: 'known' });
  expect(range(stocked(free, { 'ball-4': 24 }), rules)).toMatchObject({
    problem: { code: 'strands-apart', short: ['ball-4'] },
  });
});
