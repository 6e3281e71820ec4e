/** What is kept of a sizing is what sizing says, and is kept for that very copy only. */
import { describe, expect, it } from 'vitest';
import { describedOf, sizingOf } from '#bench/check/sizedBefore.ts';
import { pieceNow, snapshotOf } from '#bench/check/pieceNow.ts';
import { describe as describeCounts } from '#core/sizing/usual.ts';
import { size } from '#core/sizing/size.ts';
import { usualCounts } from '#core/design/usualCounts.ts';
import { HANDS, SITS } from '#core/design/choice.ts';
import { catalogue } from '../shop.ts';

const copy = pieceNow(catalogue, 'weir-light');
if (copy === null) throw new Error('no piece weir-light');
const choice = {
  measure: { of: 'wrist', mm: 165 },
  sit: 'easy',
  hand: 'left',
  pick: 'best',
  quantity: 1,
} as const;

describe('a choice that was sized before', () => {
  it('has the answer of its own measure, sit, hand, pick and quantity', () => {
    let judged = 0;
    // Twice: as it is computed, and as it is kept.
    for (let round = 0; round < 2; round += 1) {
      for (const mm of [150, 165, 400])
        for (const sit of SITS)
          for (const hand of HANDS)
            for (const pick of ['best', 'above'] as const)
              for (const quantity of [1, 2]) {
                const asked = { measure: { of: 'wrist', mm }, sit, hand, pick, quantity } as const;
                expect(sizingOf(copy, asked)).toEqual(size(copy.design, copy.rules, copy.listedMinor, asked));
                judged += 1;
              }
    }
    expect(judged).toBe(2 * 3 * 3 * 2 * 2 * 2);
    const counts = usualCounts(copy.design);
    expect(describedOf(copy, counts)).toEqual(
      describeCounts(copy.design, copy.rules, copy.listedMinor, counts),
    );
  });

  it('is not sized again, until many others were asked for', () => {
    const first = sizingOf(copy, choice);
    expect(sizingOf(copy, { ...choice })).toBe(first);
    for (let quantity = 2; quantity <= 201; quantity += 1) sizingOf(copy, { ...choice, quantity });
    const again = sizingOf(copy, choice);
    expect(again).not.toBe(first);
    expect(again).toEqual(first);
  });

  it('is sized anew once the piece or the shop’s rules are others', () => {
    expect(pieceNow(catalogue, 'weir-light')).toBe(copy);
    const piece = catalogue.pieces.find(({ id }) => id === 'weir-light')!;
    const rules = { ...catalogue.shop.rules, currency: 'USD' };
    const other = snapshotOf(piece, { ...catalogue.shop, rules });
    expect(other.rules.currency).toBe('USD');
    expect(sizingOf(other, choice)).not.toBe(sizingOf(copy, choice));
    expect(snapshotOf({ ...piece, revision: 'later' }, catalogue.shop).revision).toBe('later');
  });
});
