/** Postage as the maker's rules have it, beside what the buyer saw. */
import { describe, expect, it } from 'vitest';
import { pieceNow } from '#bench/check/pieceNow.ts';
import { recheck } from '#bench/check/recheck.ts';
import type { PostRules } from '#core/post/rules.ts';
import type { Delivery, OrderDocument } from '#order/document.ts';
import { posted } from '../../order/orders.ts';
import { catalogue, frame, orderFor } from '../shop.ts';

const copy = pieceNow(catalogue, 'weir-light');
const GERMANY: Delivery = posted.delivery;
const order = (delivery: Delivery, postageMinor: number): OrderDocument => {
  const plain = orderFor(catalogue, 'weir-light', 165.1);
  return { ...plain, delivery, shown: { ...plain.shown, postageMinor } };
};
const check = (document: OrderDocument, post: PostRules | null | 'not kept' = copy?.post ?? null) => {
  if (copy === null) throw new Error('the demo shop has Weir Light');
  const { post: _now, ...old } = copy;
  return recheck(document, post === 'not kept' ? old : { ...old, post }, frame.now);
};
const rules = (fields: Partial<PostRules>): PostRules => ({
  packingG: 40,
  groups: [
    { countries: ['DE'], elsewhere: false, freeFromMinor: null, bands: [{ upToG: 500, priceMinor: 820 }] },
  ],
  collection: false,
  ...fields,
});

describe('the maker reckons postage again', () => {
  it('and comes to what the demo shop showed', () => {
    expect(check(order(GERMANY, 820))).toMatchObject({ postageMinor: 820, differences: [] });
    expect(check(order({ by: 'collection' }, 0))).toMatchObject({ postageMinor: 0, differences: [] });
  });

  it.each<[string, OrderDocument, PostRules | null, number, object]>([
    [
      'another price',
      order(GERMANY, 1),
      rules({}),
      820,
      { code: 'postage', shownMinor: 1, nowMinor: 820, shownIn: 'GBP' },
    ],
    [
      'postage on what is collected',
      order({ by: 'collection' }, 500),
      rules({ collection: true }),
      0,
      { code: 'postage', shownMinor: 500, nowMinor: 0, shownIn: 'GBP' },
    ],
    ['nothing to collect from', order({ by: 'collection' }, 0), rules({}), 0, { code: 'no-collection' }],
    [
      'a country not served',
      order(GERMANY, 820),
      rules({ groups: [] }),
      820,
      { code: 'post-not-served', country: 'DE' },
    ],
    ['a shop that posts no more', order(GERMANY, 820), null, 820, { code: 'post-not-served', country: 'DE' }],
    [
      'too many for a parcel',
      { ...order(GERMANY, 820), quantity: 40 },
      rules({}),
      820,
      { code: 'post-too-heavy', mostG: 500 },
    ],
  ])('and names %s', (_, document, post, postageMinor, difference) => {
    const found = check(document, post);
    expect(found.postageMinor).toBe(postageMinor);
    expect(found.differences).toEqual([expect.objectContaining(difference)]);
  });

  it('but holds nothing against an order that wasn’t asked, or a copy of before there were rules', () => {
    expect(check(order({ by: 'unsaid' }, 0), rules({})).differences).toEqual([]);
    expect(check(order({ by: 'unsaid' }, 820), rules({}))).toMatchObject({
      postageMinor: 820,
      differences: [],
    });
    expect(check(order(GERMANY, 1), 'not kept')).toMatchObject({ postageMinor: 1, differences: [] });
  });
});
