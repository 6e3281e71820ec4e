import { describe, expect, test } from 'vitest';
import { LANGS } from '#words/lang.ts';
import { groupDescription } from '#ui/models/groupDescription.ts';
import { groupings } from '#ui/models/groups.ts';
import { pagesOf } from '#ui/models/lists.ts';
import { catalogueOf } from '#tests/support/catalogue.ts';

const catalogue = catalogueOf();
const { currency } = catalogue.shop.rules;
const [piece] = catalogue.pieces.filter(({ status }) => status !== 'past');
if (piece === undefined) throw new Error('the demo shop has no piece that can be had');
const group = (pieces: readonly (typeof piece)[]) => ({
  key: 'x',
  name: 'X',
  title: 'Pieces in grey',
  pieces,
});
const named = (name: string, listedMinor = 4200, status: (typeof piece)['status'] = 'to-order') => ({
  ...piece,
  ...{ name, listedMinor, status },
});

describe('what search engines show of a list', () => {
  test('names three pieces, counts the others and says the least price of what can be had', () => {
    const pieces = [named('Ford'), named('Weir', 3850), named('Loom'), named('Mist', 900, 'past')];
    expect(groupDescription(group(pieces), pieces, 'GBP', 'en')).toBe(
      'Pieces in grey: Ford, Weir, Loom and 1 more. Strung to your size, from £38.50.',
    );
  });

  test('offers nothing where all are past', () => {
    const pieces = [named('Mist', 900, 'past')];
    expect(groupDescription(group(pieces), pieces, 'GBP', 'en')).toBe(
      'Pieces in grey: Mist. Not made any more, kept here to look at and to ask about.',
    );
  });

  test.each(LANGS)('differs for every list of the demo shop and every page of it: %s', (lang) => {
    const all = groupings(catalogue, lang).flatMap(({ groups }) =>
      groups.flatMap((one) =>
        pagesOf(one.pieces).map(({ props }) => groupDescription(one, props.part.pieces, currency, lang)),
      ),
    );
    expect(all.length).toBeGreaterThan(100);
    expect(new Set(all).size).toBe(all.length);
    const long = all.filter((one) => one.length > 200);
    expect(long).toEqual([]);
  });
});
