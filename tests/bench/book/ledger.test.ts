/** The sums of an order's money: by hand, and for any run of payments and refunds that the ledger takes. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ledgerOf, refusalOf, type Movement } from '#bench/book/ledger.ts';
import { PAYMENT_KINDS } from '#words/benchCodes.ts';

const paid = (minor: number): Movement => ({ kind: 'paid', minor });
const refunded = (minor: number): Movement => ({ kind: 'refunded', minor });

describe('an order’s money', () => {
  it.each<[string, number, Movement[], number, string]>([
    ['nothing came', 6450, [], 6450, 'unpaid'],
    ['half of it came', 6450, [paid(3000)], 3450, 'part-paid'],
    ['all of it came', 6450, [paid(3000), paid(3450)], 0, 'settled'],
    ['all went back', 6450, [paid(6450), refunded(6450)], 6450, 'unpaid'],
    ['more came', 6450, [paid(7000)], -550, 'to-pay-back'],
    ['the rest went back', 6450, [paid(7000), refunded(550)], 0, 'settled'],
    ['there is nothing to pay', 0, [], 0, 'settled'],
  ])('where %s', (_, total, movements, openMinor, standing) => {
    expect(ledgerOf(total, movements)).toMatchObject({ totalMinor: total, openMinor, standing });
  });

  it('takes no more than is open unless it really was more, and gives back no more than is here', () => {
    const half = ledgerOf(6450, [paid(3000)]);
    expect(refusalOf(half, paid(3450), false, 'GBP')).toBeNull();
    expect(refusalOf(half, paid(3451), false, 'GBP')).toEqual({
      code: 'more-than-open',
      openMinor: 3450,
      currency: 'GBP',
    });
    expect(refusalOf(half, paid(3451), true, 'GBP')).toBeNull();
    expect(refusalOf(half, refunded(3000), false, 'GBP')).toBeNull();
    expect(refusalOf(half, refunded(3001), true, 'GBP')).toMatchObject({
      code: 'more-than-paid',
      hereMinor: 3000,
    });
    const over = ledgerOf(6450, [paid(7000)]);
    expect(refusalOf(over, paid(1), false, 'GBP')).toMatchObject({ openMinor: 0 });
  });
});

/** Coarse sums, so that they often meet. */
const coarse = (least: number, most: number) => fc.integer({ min: least, max: most }).map((one) => one * 500);
const movement = fc.record({
  kind: fc.constantFrom(...PAYMENT_KINDS),
  minor: coarse(1, 20),
  really: fc.boolean(),
});

it('holds after any run of movements that it takes: open = total − paid + refunded, and never more back than came', () => {
  let taken = 0;
  let refused = 0;
  const seen = new Set<string>();
  fc.assert(
    fc.property(coarse(0, 40), fc.array(movement, { maxLength: 20 }), (total, tries) => {
      const kept: Movement[] = [];
      let here = 0;
      for (const { kind, minor, really } of tries) {
        const before = ledgerOf(total, kept);
        if (refusalOf(before, { kind, minor }, really, 'GBP') !== null) {
          refused += 1;
          const fits = kind === 'refunded' ? minor <= here : really || minor <= total - here;
          expect(fits).toBe(false);
          continue;
        }
        taken += 1;
        kept.push({ kind, minor });
        here += kind === 'paid' ? minor : -minor;
        expect(here).toBeGreaterThanOrEqual(0);
        const after = ledgerOf(total, kept);
        seen.add(after.standing);
        expect(after.openMinor).toBe(total - after.paidMinor + after.refundedMinor);
        expect(after.paidMinor - after.refundedMinor).toBe(here);
        // A payment of no more than was open leaves nothing to pay back.
        if (kind === 'paid' && !really) expect(after.openMinor).toBeGreaterThanOrEqual(0);
      }
    }),
    { numRuns: 500 },
  );
  expect(taken).toBeGreaterThan(500);
  expect(refused).toBeGreaterThan(500);
  expect([...seen].sort()).toEqual(['part-paid', 'settled', 'to-pay-back', 'unpaid']);
});
