import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { beadsMm, costsOf, materialsMilli, wireMm } from '#core/sizing/price/costs.ts';
import { minutesOf, strungCount } from '#core/sizing/price/minutes.ts';
import { priceOf, rulePrice } from '#core/sizing/price/price.ts';
import { over } from '#core/sizing/price/whole.ts';
import type { Rules } from '#core/design/rules.ts';
import { usual } from '#core/sizing/usual.ts';
import {
  ALL,
  design,
  focalBracelet,
  pendantNecklace,
  RULES,
  twoStrands,
  withComponent,
} from '#tests/support/workshop.ts';

const price = (more: Partial<Rules['price']>): Rules => ({ ...RULES, price: { ...RULES.price, ...more } });

describe('rounding up', () => {
  it.each([
    [0, 5, 0],
    [1, 5, 1],
    [5, 5, 1],
    [6, 5, 2],
    [-1, 5, 0],
    [-5, 5, -1],
    [-6, 5, -1],
  ])('%i over %i is %i', (amount, unit, whole) => {
    expect(over(amount, unit)).toBe(whole);
  });
});

describe('minutes', () => {
  it('are the piece, its strands, two ends a strand, and every component', () => {
    expect(strungCount(design(), [[8]])).toBe(16);
    expect(minutesOf(design(), [[8]], RULES)).toBe(20 + 5 + 2 * 4 + 16 * 0.25);
    expect(minutesOf(twoStrands, usual(twoStrands), RULES)).toBe(20 + 2 * (5 + 8) + (16 + 32) * 0.25);
  });

  it('count a focal once', () => {
    expect(strungCount(focalBracelet, [[1, 6, 1]])).toBe(1 + 2 * 6 * 2 + 2);
  });
});

describe('costs', () => {
  it('are beads, findings, wire, packing and labour, each a whole number', () => {
    // 16 balls at 40; two crimps, two covers, clasp and ring at 40; 128 mm of beads
    const found = costsOf(design(), [[8]], RULES);
    expect(beadsMm(design(), 0, [[8]])).toBe(128);
    expect(wireMm(design(), [[8]], RULES)).toBe(Math.ceil(128 + 32 + 101.6));
    expect(found).toEqual({
      beadsMinor: 640,
      findingsMinor: 240,
      wireMinor: Math.ceil((262 * 120) / 1000),
      packingMinor: 150,
      labourMinor: Math.ceil((37 * 1500) / 60),
      minutes: 37,
    });
  });

  it('a pendant and its rings are findings', () => {
    const without = costsOf({ ...pendantNecklace, hanging: null }, usual(pendantNecklace), RULES);
    const found = costsOf(pendantNecklace, usual(pendantNecklace), RULES);
    expect(found.findingsMinor - without.findingsMinor).toBe(1200 + 40);
    expect(found.beadsMinor).toBe(without.beadsMinor);
  });

  it('wire of several strands is cut from each', () => {
    const one = beadsMm(twoStrands, 0, usual(twoStrands));
    const two = beadsMm(twoStrands, 1, usual(twoStrands));
    expect(wireMm(twoStrands, usual(twoStrands), RULES)).toBe(
      Math.ceil(one + 133.6) + Math.ceil(two + 133.6),
    );
    expect(beadsMm(twoStrands, 2, usual(twoStrands))).toBe(0);
  });

  it('materials in thousandths are exact', () => {
    expect(materialsMilli(design(), [[8]], RULES)).toBe(880_000 + 262 * 120);
  });
});

describe('the price', () => {
  it('by rule: materials marked up, labour, packing, rounded up', () => {
    // (880 + 31.44) × 2.5 + 925 + 150 = 3353.6, up to 3400
    expect(rulePrice(design(), [[8]], RULES)).toBe(3400);
    expect(rulePrice(design(), [[8]], price({ roundToMinor: 1 }))).toBe(3354);
    expect(rulePrice(design(), [[8]], price({ roundToMinor: 0 }))).toBe(3354);
  });

  it('of the piece as listed is the listed price, rounded or not', () => {
    expect(priceOf(design(), [[8]], RULES, 5013)).toBe(5013);
  });

  it('of a larger piece adds material and work', () => {
    // two more balls: (80 + 16 × 0.12) × 2.5 + 0.5 min at 25 a minute = 204.8 + 12.5
    expect(priceOf(design(), [[9]], price({ roundToMinor: 1 }), 5000)).toBe(5218);
    expect(priceOf(design(), [[9]], RULES, 5000)).toBe(5250);
  });

  it('of a smaller piece is the listed price, unless the shop says that it costs less', () => {
    expect(priceOf(design(), [[7]], RULES, 5000)).toBe(5000);
    expect(priceOf(design(), [[7]], price({ smallerCostsLess: true }), 5000)).toBe(4800);
  });

  it('of a smaller piece never rises by rounding, and never falls below nothing', () => {
    expect(priceOf(design(), [[7]], price({ smallerCostsLess: true, roundToMinor: 1000 }), 5013)).toBe(5000);
    expect(priceOf(design(), [[7]], price({ smallerCostsLess: true, roundToMinor: 9000 }), 5013)).toBe(5013);
    expect(priceOf(design(), [[0]], price({ smallerCostsLess: true }), 100)).toBe(0);
  });

  it('of another clasp or pendant adds what that is dearer', () => {
    const dear = withComponent(pendantNecklace, 'drop', { costMinor: 2000 });
    // 800 more of material at 250 %
    expect(priceOf(dear, usual(dear), RULES, 5000, pendantNecklace)).toBe(7000);
    expect(priceOf(pendantNecklace, usual(dear), RULES, 5000, dear)).toBe(5000);
  });

  it('is a whole number that never falls as beads are added', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...ALL),
        fc.integer({ min: 1, max: 400 }),
        fc.integer({ min: 0, max: 5000 }),
        fc.boolean(),
        (piece, percent, rate, less) => {
          const rules = price({ materialPercent: percent, labourMinorPerHour: rate, smallerCostsLess: less });
          let before = -1;
          for (let more = 0; more < 5; more += 1) {
            const counts = usual(piece).map((strand) =>
              strand.map((count, at) => (at === 0 ? count + more : count)),
            );
            const found = priceOf(piece, counts, rules, 4999);
            expect(Number.isSafeInteger(found)).toBe(true);
            expect(found).toBeGreaterThanOrEqual(before);
            before = found;
          }
        },
      ),
    );
  });

  it('costs nothing to count what costs nothing', () => {
    const free = withComponent(design(), 'ball-8', { costMinor: 0 });
    expect(costsOf(free, [[8]], RULES).beadsMinor).toBe(0);
  });
});
