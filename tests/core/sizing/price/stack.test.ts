/** A price taken apart: its lines come to the very price that the shop asks, whatever the rules. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Rules } from '#core/design/rules.ts';
import type { Counts, Design } from '#core/design/design.ts';
import { earnedAt, priceStack, STACK_LINES, wholesaleMinor } from '#core/sizing/price/stack.ts';
import { feesMinor, priceOf, rulePrice } from '#core/sizing/price/price.ts';
import { usual } from '#core/sizing/usual.ts';
import { isPrice } from '#core/verify/price.ts';
import { random, randomDesign, randomStrands } from '#tests/core/random.ts';
import { design, RULES, withComponent } from '#tests/support/workshop.ts';

const price = (more: Partial<Rules['price']>): Rules => ({ ...RULES, price: { ...RULES.price, ...more } });

/** Rules of any shop there may be, fees and endings or none. */
const someRules = fc
  .record({
    materialPercent: fc.integer({ min: 0, max: 600 }),
    labourMinorPerHour: fc.integer({ min: 0, max: 9000 }),
    packingMinor: fc.integer({ min: 0, max: 400 }),
    roundToMinor: fc.constantFrom(0, 1, 5, 50, 100, 500),
    smallerCostsLess: fc.boolean(),
    fees: fc.option(
      fc.record({
        hundredths: fc.integer({ min: 0, max: 6000 }),
        eachMinor: fc.integer({ min: 0, max: 100 }),
      }),
    ),
    ending: fc.double({ min: 0, max: 0.999, noNaN: true }),
  })
  .map(({ fees, ending, ...rest }) =>
    price({
      ...rest,
      ...(fees === null ? {} : { fees }),
      ...(ending < 0.5 ? {} : { endingMinor: Math.floor(ending * rest.roundToMinor) }),
    }),
  );

type Case = { readonly piece: Design; readonly counts: Counts };

/** A random piece with what it is strung of at random prices, in thousandths too, and counts within its ranges. */
const someCase = fc.integer({ min: 1, max: 1e6 }).map((seed): Case => {
  const of = random(seed);
  const make = of.next() < 0.7 ? randomDesign : randomStrands;
  const made = make(of, of.pick(['necklace', 'bracelet']), { sections: 3, repeats: 6 });
  const dear = Object.values(made.components).map((one) => {
    const costMinor = of.next() < 0.8 ? of.whole(0, 900) : of.whole(0, 900_000) / 1000;
    return [one.id, { ...one, costMinor }] as const;
  });
  const counts = made.strands.map(({ sections }) =>
    sections.map(({ role, usual: listed, fewest, most }) =>
      role === 'focal' ? listed : of.whole(fewest, most),
    ),
  );
  return { piece: { ...made, components: Object.fromEntries(dear) }, counts };
});

const listedPrice = fc.integer({ min: 0, max: 30_000 });
const RUNS = { numRuns: process.env['CLASPWISE_THOROUGH'] ? 5000 : 400 };

/** One more or one fewer of the first section that has room. */
function next({ piece, counts }: Case): Counts | null {
  for (const [strand, { sections }] of piece.strands.entries()) {
    const at = sections.findIndex(
      ({ role, most }, index) => role !== 'focal' && counts[strand]![index]! < most,
    );
    if (at >= 0) return counts.with(strand, counts[strand]!.with(at, counts[strand]![at]! + 1));
  }
  return null;
}

describe('the lines of a price', () => {
  it('are whole and come to the price that the shop asks', () => {
    fc.assert(
      fc.property(someCase, someRules, listedPrice, ({ piece, counts }, rules, listedMinor) => {
        const { lines, ruleMinor, priceMinor, earned } = priceStack(piece, counts, rules, listedMinor);
        const sum = STACK_LINES.reduce((all, line) => all + lines[line], 0);
        expect(Object.values(lines).every(Number.isSafeInteger)).toBe(true);
        expect(sum).toBe(priceMinor);
        expect(priceMinor).toBe(priceOf(piece, counts, rules, listedMinor));
        expect(sum - lines.own).toBe(ruleMinor);
        expect(ruleMinor).toBe(rulePrice(piece, counts, rules));
        // Five lines are rounded up by less than one each; the price by no more than a step.
        expect(lines.rounding).toBeGreaterThanOrEqual(-4);
        expect(lines.rounding).toBeLessThanOrEqual(Math.max(1, rules.price.roundToMinor));
        expect(earned.leftMinor + earned.materialMinor + earned.packingMinor + earned.feesMinor).toBe(
          priceMinor,
        );
      }),
      RUNS,
    );
  });

  it('are what a buyer pays for, found anew without the code that found it', () => {
    fc.assert(
      fc.property(someCase, someRules, listedPrice, ({ piece, counts }, rules, listedMinor) => {
        const asked = priceOf(piece, counts, rules, listedMinor);
        const priced = { rules, listedMinor };
        expect(isPrice(piece, counts, asked, priced)).toBe(true);
        expect(isPrice(piece, counts, asked + 1, priced)).toBe(false);
        expect(isPrice(piece, counts, asked - 1, priced)).toBe(false);
      }),
      RUNS,
    );
  });

  it('leave by the rule what material, work and packing come to, whatever selling takes', () => {
    fc.assert(
      fc.property(someCase, someRules, ({ piece, counts }, rules) => {
        const ruled = rulePrice(piece, counts, rules);
        const bare = rulePrice(
          piece,
          counts,
          price({ ...rules.price, roundToMinor: 1, endingMinor: 0, fees: { hundredths: 0, eachMinor: 0 } }),
        );
        expect(ruled - feesMinor(ruled, rules)).toBeGreaterThanOrEqual(ruled === 0 ? 0 : bare);
      }),
      RUNS,
    );
  });

  it('a larger piece never costs less, nor does a dearer hour or a dearer fee by the rule', () => {
    let tried = 0;
    fc.assert(
      fc.property(someCase, someRules, listedPrice, (one, rules, listedMinor) => {
        const { piece, counts } = one;
        const more = next(one);
        if (more !== null) {
          tried += 1;
          expect(priceOf(piece, more, rules, listedMinor)).toBeGreaterThanOrEqual(
            priceOf(piece, counts, rules, listedMinor),
          );
        }
        const ruled = rulePrice(piece, counts, rules);
        const { labourMinorPerHour, fees } = rules.price;
        const dearer = [
          price({ ...rules.price, labourMinorPerHour: labourMinorPerHour + 100 }),
          price({
            ...rules.price,
            fees: { hundredths: (fees?.hundredths ?? 0) + 100, eachMinor: fees?.eachMinor ?? 0 },
          }),
          price({
            ...rules.price,
            fees: { hundredths: fees?.hundredths ?? 0, eachMinor: (fees?.eachMinor ?? 0) + 5 },
          }),
        ];
        for (const by of dearer) expect(rulePrice(piece, counts, by)).toBeGreaterThanOrEqual(ruled);
      }),
      RUNS,
    );
    expect(tried).toBeGreaterThan(RUNS.numRuns / 2);
  });
});

describe('by hand', () => {
  // 16 balls at 40; two crimps, two covers, clasp and ring at 40; 262 mm of wire at 120 a metre.
  const stack = priceStack(design(), [[8]], RULES, 5000);

  it('each line of a small bracelet', () => {
    expect(stack.lines).toEqual({
      beads: 640,
      findings: 240,
      wire: 32,
      // 911.44 × 1.5 = 1367.16, up
      'mark-up': 1368,
      // 37 min at 1500 an hour: 925
      labour: 925,
      packing: 150,
      fees: 0,
      rounding: 45,
      own: 1600,
    });
    expect(stack).toMatchObject({ ruleMinor: 3400, priceMinor: 5000 });
  });

  it('what an hour of it earns', () => {
    // 5000 − 912 − 150 over 37 minutes
    expect(stack.earned).toMatchObject({
      leftMinor: 3938,
      minutes: 37,
      perHourMinor: Math.round((3938 * 60) / 37),
    });
    const none = { ...RULES, minutes: { perPiece: 0, perStrand: 0, perEnd: 0, perBead: 0 } };
    expect(earnedAt(design(), [[8]], none, 5000).perHourMinor).toBeNull();
  });

  it('fees are in the price and taken off it', () => {
    const rules = price({ fees: { hundredths: 400, eachMinor: 30 } });
    // 3353.6 up to 3354, and 30: over 0.96 is 3525, up to 3550; 4 % of that is 142
    expect(rulePrice(design(), [[8]], rules)).toBe(3550);
    expect(feesMinor(3550, rules)).toBe(172);
    expect(feesMinor(0, rules)).toBe(0);
    expect(earnedAt(design(), [[8]], rules, 3550)).toMatchObject({
      feesMinor: 172,
      leftMinor: 3550 - 912 - 150 - 172,
    });
    expect(earnedAt(design(), [[8]], rules, 3550, false)).toMatchObject({ feesMinor: 0 });
    // A larger piece: 217.3 more, up to 218, over 0.96 is 227.1
    expect(
      priceOf(design(), [[9]], price({ fees: { hundredths: 400, eachMinor: 30 }, roundToMinor: 1 }), 5000),
    ).toBe(5228);
  });

  it('a price ends as people like it', () => {
    expect(rulePrice(design(), [[8]], price({ roundToMinor: 100, endingMinor: 95 }))).toBe(3395);
    expect(rulePrice(design(), [[8]], price({ roundToMinor: 100, endingMinor: 50 }))).toBe(3450);
    expect(priceOf(design(), [[9]], price({ roundToMinor: 100, endingMinor: 95 }), 5000)).toBe(5295);
    expect(priceOf(design(), [[9]], price({ roundToMinor: 100, endingMinor: 95 }), 4995)).toBe(5295);
  });

  it('a cost that is tried out counts to the thousandth', () => {
    const dearer = withComponent(design(), 'ball-8', { costMinor: 40.4 });
    // 16 × 0.4 = 6.4 more of material
    expect(priceStack(dearer, [[8]], price({ roundToMinor: 1 }), 5000)).toMatchObject({
      lines: { beads: 647 },
      // 3353.6 and 16
      ruleMinor: 3370,
      // The listed price is for the piece as it is listed.
      priceMinor: 5000,
    });
    expect(usual(dearer)).toEqual([[8]]);
  });

  it('wholesale is a share of the price, rounded up', () => {
    expect([wholesaleMinor(5000, 50), wholesaleMinor(4999, 50), wholesaleMinor(5000, 66.67)]).toEqual([
      2500, 2500, 3334,
    ]);
  });
});
