import { describe, expect, test } from 'vitest';
import type { Piece } from '#catalogue/model/catalogue.ts';
import { nearPages, PAGE_SIZE, pagesOf } from '#ui/models/lists.ts';
import { address, inEachLang } from '#ui/site/addresses.ts';

const pieces = (count: number): Piece[] =>
  Array.from({ length: count }, (_, index) => ({ id: `piece-${index}` }) as Piece);

describe('pages of a list', () => {
  test.each([0, 1, PAGE_SIZE, PAGE_SIZE + 1, 5 * PAGE_SIZE - 1])(
    'hold all of %i pieces once, in order',
    (count) => {
      const parts = pagesOf(pieces(count)).map(({ props }) => props.part);
      expect(parts.flatMap((part) => part.pieces.map(({ id }) => id))).toEqual(
        pieces(count).map(({ id }) => id),
      );
      expect(parts.every((part) => part.pieces.length <= PAGE_SIZE)).toBe(true);
      expect(parts.map(({ page }) => page)).toEqual(parts.map((_, index) => index + 1));
      expect(parts).toHaveLength(Math.max(1, Math.ceil(count / PAGE_SIZE)));
    },
  );

  test('the first has no number in its address', () => {
    expect(pagesOf(pieces(PAGE_SIZE + 1)).map(({ params }) => params.page)).toEqual([undefined, '2']);
  });

  test('numbers shown are few, and never leave out the ends or the neighbours', () => {
    for (let of = 1; of <= 40; of += 1) {
      for (let page = 1; page <= of; page += 1) {
        const shown = nearPages(page, of);
        expect(shown.length).toBeLessThanOrEqual(7);
        for (const wanted of [1, page, of]) expect(shown).toContain(wanted);
        const numbers = shown.filter((one) => one !== null);
        expect(numbers).toEqual([...numbers].sort((a, b) => a - b));
      }
    }
    expect(nearPages(5, 9)).toEqual([1, null, 4, 5, 6, null, 9]);
  });
});

describe('addresses', () => {
  test('name the language only where it is not the first', () => {
    expect(address('en')).toBe('/');
    expect(address('de')).toBe('/de/');
    expect(address('en', 'pieces', 'ford')).toBe('/pieces/ford/');
    expect(address('de', 'pieces', 2)).toBe('/de/pieces/2/');
    expect(address('en', 'pieces', '')).toBe('/pieces/');
    expect(address('en', 'a b')).toBe('/a%20b/');
  });

  test('come once a language', () => {
    const paths = inEachLang((lang) => [{ params: { id: 'x' }, props: { said: lang } }]);
    expect(paths).toEqual([
      { params: { lang: undefined, id: 'x' }, props: { said: 'en', lang: 'en' } },
      { params: { lang: 'de', id: 'x' }, props: { said: 'de', lang: 'de' } },
    ]);
  });
});
