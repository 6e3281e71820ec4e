import fc from 'fast-check';
import { expect, test } from 'vitest';
import { costs, figuresOf, pricesOf, rankBy } from '#ui/search/figures.ts';
import { addressWith, shownOf } from '#ui/search/hit.ts';
import { indexedPage } from '#ui/search/index/indexedPage.ts';
import { recordOf } from '#ui/search/index/recordOf.ts';
import { SORTS } from '#ui/search/query.ts';

const text = fc.string({ maxLength: 40, unit: 'grapheme' });
const record = fc.record({
  title: text,
  picture: fc.stringMatching(/^[0-9a-f]{12}$/),
  name: fc.array(text, { maxLength: 4 }),
  others: fc.array(text, { maxLength: 4 }),
  filters: fc.array(fc.tuple(text, text), { maxLength: 4 }),
  sizes: fc.array(fc.tuple(text, text), { maxLength: 4 }),
  made: fc.constantFrom('2016', '2024-06', '2026-09-01'),
  priceMinor: fc.option(fc.nat(100_000)),
  lengthMm: fc.nat(2000),
});

const attribute = (value: string): string => value.replaceAll('&', '&amp;').replaceAll('"', '&quot;');

test('a record is read from its page as it was written, and from no other page', () => {
  fc.assert(
    fc.property(record, (one) => {
      const page = `<main><div hidden data-find="${attribute(JSON.stringify(one))}"></div></main>`;
      expect(recordOf(page)).toEqual(one);
    }),
  );
  expect(recordOf('<main><div hidden></div></main>')).toBeNull();
});

test('a result shows name, kind, price and picture from its address, whatever is in them', () => {
  fc.assert(
    fc.property(record, text, (one, kind) => {
      const url = addressWith('/pieces/oxbow/', { ...one, filters: [['kind', kind]] });
      const shown = shownOf(
        { url },
        { pictures: '/p/', kinds: JSON.stringify({ [kind]: 'Bracelet' }), currency: 'GBP', lang: 'en' },
      );
      expect(shown.address).toBe('/pieces/oxbow/');
      expect(shown.title).toBe(one.title);
      expect(shown.facts).toBe('Bracelet');
      expect(shown.image).toBe(`/p/oxbow-${one.picture}.svg`);
      if (one.priceMinor === null) expect(shown.price).toBe('');
      else expect(Math.round(Number(shown.price.replace(/[£,]/g, '')) * 100)).toBe(one.priceMinor);
    }),
  );
});

test('nothing of a record becomes markup in what is indexed', () => {
  fc.assert(
    fc.property(record, (one) => {
      const marks = indexedPage(one).match(/<[^>]*>/g) ?? [];
      expect(marks.length).toBe(one.sizes.length * 2 + 13);
    }),
  );
});

test('a piece costs what is asked for where every bound holds, borders included; one that is gone costs nothing', () => {
  fc.assert(
    fc.property(fc.nat(500), fc.nat(500), fc.nat(50_000), (least, most, minor) => {
      const bound = pricesOf({ least, most }, 'GBP');
      expect(costs(minor, [bound])).toBe(minor >= least * 100 && minor <= most * 100);
      expect(costs(null, [bound])).toBe(false);
      expect(costs(null, [])).toBe(true);
    }),
  );
});

test('orders rise or fall by their figure, and what is gone stands last by price', () => {
  const pieces = [500, null, 100, 300].map((priceMinor, at) => ({ priceMinor, lengthMm: 400 - at }));
  const listed = (sort: (typeof SORTS)[number]): number[] | null => {
    const rank = rankBy(sort, figuresOf(pieces));
    return rank && pieces.map((_, at) => at).sort((one, other) => rank(one) - rank(other));
  };
  expect(Object.fromEntries(SORTS.map((sort) => [sort, listed(sort)]))).toEqual({
    best: null,
    newest: [0, 1, 2, 3],
    cheapest: [2, 3, 0, 1],
    dearest: [0, 3, 2, 1],
    shortest: [3, 2, 1, 0],
  });
});
