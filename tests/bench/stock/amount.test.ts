/** Amounts as she types them: pieces, strands, grams, metres, and what can't be read. */
import { expect, it } from 'vitest';
import type { Sold } from '#catalogue/model/supply.ts';
import { readAmount, unitsOf } from '#bench/stock/amount.ts';

const sold: Sold = {
  ...{ by: 'strand', holds: 67, estimated: true, priceMinor: 420, supplier: null, number: null },
};
const bead = { wire: false, sold, massG: 0.31 };
const reel = { wire: true, sold: { ...sold, by: 'spool', holds: 9144 } as const, massG: 0 };
const amount = (text: string, unit: string, of: typeof bead | typeof reel = bead, least: 0 | 1 = 1) => {
  const read = readAmount(text, unit, of, least);
  return read.ok ? read.amount : read.problem.code;
};

it('offers what the thing is sold in, besides what it is counted in', () => {
  expect(unitsOf(bead)).toEqual(['piece', 'strand', 'g']);
  expect(unitsOf({ wire: false, sold: null })).toEqual(['piece', 'g']);
  expect(unitsOf(reel)).toEqual(['m', 'cm', 'ft', 'in', 'spool']);
});

it.each([
  ['64', 'piece', 64],
  ['64', '', 64],
  ['3', 'strand', 201],
  ['1 1/2', 'strand', 101],
  ['0,5', 'strand', 34],
  // 20 g of 0.31 g each: 64.5.
  ['20', 'g', 65],
  ['1.5', 'piece', 'amount-not-whole'],
  ['', 'piece', 'amount-missing'],
  ['some', 'piece', 'amount-unreadable'],
  ['3 4', 'piece', 'amount-unreadable'],
  ['-4', 'piece', 'amount-nothing'],
  ['0', 'piece', 'amount-nothing'],
  ['0.1', 'g', 'amount-nothing'],
  ['2000000', 'piece', 'amount-too-much'],
  ['3', 'spool', 'unit-unknown'],
  ['3', 'dozen', 'unit-unknown'],
])('%s in “%s” is %s', (text, unit, expected) => {
  expect(amount(text, unit)).toBe(expected);
});

it.each([
  // NIST SP 811: 1 ft = 0.3048 m, 1 in = 25.4 mm.
  ['30', 'ft', 9144],
  ['2', 'spool', 18_288],
  ['1.25', 'm', 1250],
  ['16', 'in', 406],
  ['3', 'piece', 'unit-unknown'],
])('of wire %s in “%s” is %s', (text, unit, expected) => {
  expect(amount(text, unit, reel)).toBe(expected);
});

it('lets a count find nothing', () => {
  expect(amount('0', 'piece', bead, 0)).toBe(0);
});
