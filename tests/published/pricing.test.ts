/** Fees and mark-up against formulas that any text on retail mathematics has. */
import { describe, expect, it } from 'vitest';
import type { Rules } from '#core/design/rules.ts';
import { feesMinor, rulePrice } from '#core/sizing/price/price.ts';
import { priceStack } from '#core/sizing/price/stack.ts';
import { design, RULES } from '#tests/support/workshop.ts';

/** Material alone, to the minor unit. */
const material = (percent: number, fees?: Rules['price']['fees']): Rules => ({
  ...RULES,
  minutes: { perPiece: 0, perStrand: 0, perEnd: 0, perBead: 0 },
  price: {
    ...RULES.price,
    ...{ labourMinorPerHour: 0, packingMinor: 0, materialPercent: percent, roundToMinor: 1 },
    ...(fees === undefined ? {} : { fees }),
  },
});

/** The piece with all of its cost in its clasp. */
const costing = (costMinor: number) => {
  const plain = design();
  const components = Object.entries(plain.components).map(
    ([id, one]) => [id, { ...one, costMinor: id === plain.ends.clasp ? costMinor : 0 }] as const,
  );
  return { ...plain, wire: { ...plain.wire, costMinorPerM: 0 }, components: Object.fromEntries(components) };
};

/**
 * S = C + M; rate of mark-up on cost M / C, on selling price (margin) M / S:
 * J. Olivier, Business Math: A Step-by-Step Handbook (open textbook), 4.2, from memory.
 */
describe('mark-up and margin', () => {
  // Wikipedia, "Markup (business)": cost 2000, sold at 2500, is a mark-up of 25 % and a margin of 20 % (from memory).
  it('cost 2000 sold at 2500', () => {
    const { lines, priceMinor } = priceStack(costing(200_000), [[8]], material(125), 250_000);
    expect(priceMinor).toBe(250_000);
    expect(lines['mark-up'] / lines.findings).toBe(0.25);
    expect(lines['mark-up'] / priceMinor).toBe(0.2);
    expect([lines.own, lines.rounding]).toEqual([0, 0]);
  });

  // Margin = mark-up / (1 + mark-up), and back: keystone, twice the cost, is a margin of a half.
  it.each([
    [150, 1 / 3],
    [200, 1 / 2],
    [250, 3 / 5],
    [400, 3 / 4],
  ])('material at %i %% is a margin of %f', (percent, margin) => {
    const { lines, priceMinor } = priceStack(costing(120_000), [[8]], material(percent), 0);
    const markUp = lines['mark-up'] / lines.findings;
    expect(lines['mark-up'] / (priceMinor - lines.own)).toBeCloseTo(margin, 9);
    expect(markUp / (1 + markUp)).toBeCloseTo(margin, 9);
  });

  // A fee stated on the price is found from what must be left of it as a price is from a margin: S = C / (1 − rate).
  it.each([
    [20, 100_000, 125_000],
    [50, 100_000, 200_000],
    [4, 96_000, 100_000],
  ])('a fee of %i %% of the price on %i', (percent, left, asked) => {
    const rules = material(100, { hundredths: percent * 100, eachMinor: 0 });
    expect(rulePrice(costing(left), [[8]], rules)).toBe(asked);
    expect(asked - feesMinor(asked, rules)).toBe(left);
  });
});
