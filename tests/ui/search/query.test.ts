import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { EMPTY, FILTERS, fromParams, isEmpty, SORTS, toParams, type Query } from '#ui/search/query.ts';
import { FITS_OF } from '#ui/search/marks.ts';

const text = (most: number): fc.Arbitrary<string> =>
  fc
    .string({ minLength: 1, maxLength: most, unit: 'grapheme-ascii' })
    .map((one) => one.trim())
    .filter((one) => one !== '');

const query: fc.Arbitrary<Query> = fc.record({
  words: fc.option(text(30), { nil: '' }),
  filters: fc.dictionary(fc.constantFrom(...FILTERS), text(20)).map((all) => all as Query['filters']),
  sort: fc.constantFrom(...SORTS),
  fits: fc.option(fc.record({ of: fc.constantFrom(...FITS_OF), text: text(12) }), { nil: null }),
});

describe('the query in the address', () => {
  test('comes back as it went', () => {
    fc.assert(
      fc.property(query, (asked) => {
        const back = fromParams(new URLSearchParams(toParams(asked).toString()));
        expect(back).toEqual({ ...asked, filters: { ...asked.filters } });
      }),
    );
  });

  test('is empty for nothing, whatever the order', () => {
    expect(toParams(EMPTY).toString()).toBe('');
    expect(isEmpty({ ...EMPTY, sort: 'cheapest' })).toBe(true);
    expect(isEmpty({ ...EMPTY, words: 'glass' })).toBe(false);
  });

  test('takes nothing that it does not know', () => {
    const read = fromParams(new URLSearchParams('sort=random&of=head&size=50&kind=&nonsense=1'));
    expect(read).toEqual(EMPTY);
  });
});
