/** What may be chosen instead of clasp and pendant, as the page tells it. */
import { AS_DESIGNED } from '#core/design/choice.ts';
import { expect, test } from 'vitest';
import { designWith } from '#core/design/alternatives.ts';
import { describe as describePiece, usual } from '#core/sizing/usual.ts';
import { offersOf } from '#ui/models/partOffers.ts';
import { LANGS } from '#words/lang.ts';
import { goodsWords } from '#words/words.ts';
import { catalogueOf } from '#tests/support/catalogue.ts';

const { pieces, shop } = catalogueOf();
const offering = pieces.filter((piece) => offersOf(piece, shop, 'en').length > 0);

test('each part that the maker lists is offered once, clasps first, in her order', () => {
  expect(offering.length).toBeGreaterThan(0);
  for (const piece of pieces) {
    const { clasps, pendants } = piece.alternatives;
    expect(offersOf(piece, shop, 'en').map(({ part, id }) => [part, id])).toEqual([
      ...clasps.map(({ clasp }) => ['clasp', clasp.id]),
      ...pendants.map(({ id }) => ['pendant', id]),
    ]);
  }
});

test('the difference told is the swapped piece’s price at its usual counts, less the listed one', () => {
  for (const piece of offering) {
    for (const { part, id, differenceMinor } of offersOf(piece, shop, 'en')) {
      const design = designWith(piece.design, piece.alternatives, { ...AS_DESIGNED, [part]: id });
      if (design === null) throw new Error(`${piece.id} doesn’t take ${id}`);
      const { priceMinor } = describePiece(
        design,
        shop.rules,
        piece.listedMinor,
        usual(design),
        piece.design,
      );
      expect(differenceMinor, `${piece.id} ${id}`).toBe(priceMinor - piece.listedMinor);
    }
  }
});

test.each(LANGS)(
  'in %s a caution is told of a magnet where the listed clasp has none, and of no other clasp',
  (lang) => {
    const { title } = goodsWords(lang).cautions.magnet;
    const clasps = offering
      .flatMap((piece) => offersOf(piece, shop, lang))
      .filter(({ part }) => part === 'clasp');
    const warned = clasps.filter(({ cautions }) => cautions.some((one) => one.startsWith(title)));
    expect(warned.map(({ id }) => id)).toEqual(
      clasps.map(({ id }) => id).filter((id) => id.startsWith('magnet')),
    );
    expect(warned.length).toBeGreaterThan(0);
  },
);
