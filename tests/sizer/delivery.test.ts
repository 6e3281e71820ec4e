/** How an order is to reach its buyer, as her form has it. */
import { describe, expect, test } from 'vitest';
import fc from 'fast-check';
import { checkOrder } from '#order/check.ts';
import { orderWords } from '#words/words.ts';
import { formatFor } from '#words/format.ts';
import type { PostForSizer } from '#sizer/model/input.ts';
import { listedOf } from '#sizer/model/answer.ts';
import { addressProblems, deliveryOf, postageOf, wayOf } from '#sizer/ordering/model/delivery.ts';
import { checkForm, EMPTY_FORM, type OrderForm } from '#sizer/ordering/model/form.ts';
import type { OrderItem } from '#sizer/ordering/model/item.ts';
import { draftOrder, writeOrder } from '#sizer/ordering/model/write.ts';
import { bracelet } from './support.ts';

const POST: PostForSizer = {
  rules: {
    packingG: 40,
    groups: [
      { countries: ['GB'], elsewhere: false, freeFromMinor: null, bands: [{ upToG: 500, priceMinor: 395 }] },
      { countries: [], elsewhere: true, freeFromMinor: 1, bands: [{ upToG: 2000, priceMinor: 1_390 }] },
    ],
    collection: true,
  },
  countries: 'DEGBHK',
  withoutPostcode: 'HK',
  collection: 'from the workshop',
};
const ITEM: OrderItem = {
  made: 'to-measure',
  eitherHand: false,
  parts: { clasp: '', pendant: '' },
  piece: bracelet,
  lang: 'en',
  choice: { measure: { of: 'wrist', mm: 165.1 }, sit: 'easy', hand: 'left', pick: 'best', quantity: 1 },
  text: '6 1/2 in',
  unit: 'in',
  candidate: listedOf(bracelet),
  post: POST,
};
const form = (address: Partial<OrderForm['address']>, fields: Partial<OrderForm> = {}): OrderForm => ({
  ...EMPTY_FORM,
  name: 'Iris Moor',
  email: 'iris@example.org',
  ...fields,
  address: { ...EMPTY_FORM.address, ...address },
});
const WHOLE = form({ line1: ' 7 Ropewalk ', town: 'Tenterholm', postcode: 'TH0 4ZZ' });

describe('the address', () => {
  test('goes into the order in the buyer’s name, to the shop’s own country until she chooses another', () => {
    expect(deliveryOf(ITEM, WHOLE)).toEqual({
      delivery: {
        by: 'post',
        to: {
          ...{ name: 'Iris Moor', line1: '7 Ropewalk', line2: '', town: 'Tenterholm', region: '' },
          ...{ postcode: 'TH0 4ZZ', country: 'GB' },
        },
      },
      postageMinor: 395,
    });
    const other = form({ ...WHOLE.address, name: 'Solveig', country: 'DE' });
    expect(deliveryOf(ITEM, other)).toMatchObject({
      delivery: { to: { name: 'Solveig', country: 'DE' } },
      postageMinor: 0,
    });
  });

  test.each<[string, Partial<OrderForm['address']>, object]>([
    [
      'nothing',
      {},
      { 'to-line1': 'line1-missing', 'to-town': 'town-missing', 'to-postcode': 'postcode-missing' },
    ],
    ['no postcode where there are none', { line1: '8 Pier', town: 'Kowloon', country: 'HK' }, {}],
    ['a street of dashes', { line1: '--', town: 'T', postcode: '1' }, { 'to-line1': 'line1-missing' }],
    ['a recipient of dashes', { ...WHOLE.address, name: '--' }, { 'to-name': 'name-missing' }],
    [
      'too much',
      { ...WHOLE.address, region: 'x'.repeat(101), postcode: '1'.repeat(21) },
      { 'to-region': 'part-long', 'to-postcode': 'part-long' },
    ],
  ])('of %s is told by its fields', (_, address, codes) => {
    const found = Object.entries(addressProblems(POST, form(address))).map(([field, { code }]) => [
      field,
      code,
    ]);
    expect(Object.fromEntries(found)).toEqual(codes);
  });

  test('is asked only where something is posted', () => {
    expect(addressProblems(null, EMPTY_FORM)).toEqual({});
    expect(addressProblems(POST, { ...EMPTY_FORM, way: 'collection' })).toEqual({});
    expect(wayOf({ ...POST, collection: null }, { ...EMPTY_FORM, way: 'collection' })).toBe('post');
    expect(wayOf({ ...POST, rules: { ...POST.rules, groups: [] } }, EMPTY_FORM)).toBe('collection');
    expect(deliveryOf({ ...ITEM, post: null }, WHOLE)).toEqual({
      delivery: { by: 'unsaid' },
      postageMinor: 0,
    });
    expect(deliveryOf(ITEM, { ...WHOLE, way: 'collection' })).toEqual({
      delivery: { by: 'collection' },
      postageMinor: 0,
    });
  });

  test('that passes makes an order document, whatever was written in it', () => {
    const words = fc.string({ unit: 'binary', maxLength: 40 });
    let judged = 0;
    fc.assert(
      fc.property(
        words,
        words,
        words,
        words,
        words,
        fc.constantFrom('DE', 'GB', 'HK'),
        (name, line1, line2, town, postcode, country) => {
          const written = form({ name, line1: `7 ${line1}`, line2, town: `T${town}`, postcode, country });
          const wrong = { ...checkForm(written), ...addressProblems(POST, written) };
          if (Object.keys(wrong).length > 0) return;
          judged += 1;
          expect(checkOrder(writeOrder(ITEM, written, 0, () => 77))).toBeNull();
        },
      ),
    );
    expect(judged).toBeGreaterThan(20);
  });
});

describe('what posting comes to', () => {
  const many = { ...WHOLE, quantity: '99' };

  test('grows with the number of pieces, until no parcel takes them', () => {
    expect(postageOf(ITEM, WHOLE)).toEqual({ kind: 'price', priceMinor: 395 });
    expect(postageOf(ITEM, many)).toMatchObject({ kind: 'too-heavy', mostG: 500 });
    expect(draftOrder(ITEM, many).delivery).toEqual({ by: 'unsaid' });
  });

  test.each(['en', 'de'] as const)('stands in the summary with the total (%s)', (lang) => {
    const format = formatFor(lang, 'in', 'GBP');
    const words = orderWords(lang);
    const lines = words.rows(format, draftOrder(ITEM, WHOLE), 'Piece').map(({ value }) => value);
    expect(lines).toContain(format.money(395));
    expect(lines).toContain(format.money(ITEM.candidate.priceMinor + 395));
    expect(lines.join()).toContain(`7 Ropewalk, Tenterholm, TH0 4ZZ, ${format.country('GB')}`);
    expect(words.delivery.postage(format, 'GB', 395, 5_000)).toContain(format.money(395));
  });
});
