import fc from 'fast-check';
import { expect, test } from 'vitest';
import { LIST_FILES, listFile, listKey, listsOf, readList } from '#ui/search/lists.ts';
import type { Pair } from '#ui/search/reading/vocabulary.ts';

const text = fc.string({ maxLength: 12, unit: 'grapheme' });
const pair = fc.tuple(fc.constantFrom('material', 'colour', 'bead'), text);

test('every piece is found by every value it has, and by no other', () => {
  fc.assert(
    fc.property(fc.array(fc.array(pair, { maxLength: 5 }), { maxLength: 40 }), pair, (pieces, other) => {
      const files = listsOf(pieces);
      expect(files).toHaveLength(LIST_FILES);
      for (const asked of [...pieces.flat(), other] as Pair[]) {
        const has = readList(files[listFile(asked)] ?? {}, asked);
        const wanted = pieces.map((pairs) => pairs.some((one) => listKey(one) === listKey(asked)));
        expect(pieces.map((_, place) => has(place))).toEqual(wanted);
      }
    }),
  );
});

test('past the last piece nothing is there', () => {
  const has = readList(listsOf([[['bead', '8']]])[listFile(['bead', '8'])] ?? {}, ['bead', '8']);
  expect([0, 1, 7, 8, 800].map(has)).toEqual([true, false, false, false, false]);
});

test('a value costs two bits a piece at most, however many have it, and few values share a file', () => {
  const pieces = Array.from({ length: 10_000 }, (_, at): Pair[] => [
    ['kind', at % 2 === 0 ? 'Bracelets' : 'Necklaces'],
    ['bead', String(at % 40)],
  ]);
  const files = listsOf(pieces);
  const lists = files.flatMap((one) => Object.values(one));
  expect(lists).toHaveLength(42);
  expect(Math.max(...lists.map((one) => one.length))).toBeLessThan(10_000 / 4);
  expect(Math.max(...files.map((one) => Object.keys(one).length))).toBeLessThan(6);
});
