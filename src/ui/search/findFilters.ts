/** A piece's values of every filter, in the reader's words: the page and the index must agree on them. */
import type { Piece, Shop } from '#catalogue/model/catalogue.ts';
import { facetsOf } from '#catalogue/facts/facets.ts';
import { range } from '#core/sizing/range.ts';
import { describe, usual } from '#core/sizing/usual.ts';
import { closingName, colourName, materialName } from '#words/goods.ts';
import type { Lang } from '#words/lang.ts';
import { pageWords } from '#words/words.ts';
import { fitsOf, fitsReady } from './fitsOf.ts';
import { lengthBand, priceBand } from './bands.ts';
import { markNames, marksOf, ownMarks } from './marks.ts';
import type { FilterName } from './query.ts';
import type { Pair } from './reading/vocabulary.ts';

/** Values of the filters that a reader picks from a list. */
export function listFilters(
  piece: Piece,
  shop: Shop,
  lang: Lang,
): readonly (readonly [FilterName, string])[] {
  const words = pageWords(lang);
  const facets = facetsOf(piece);
  const { design, listedMinor } = piece;
  const shown = describe(design, shop.rules, listedMinor, usual(design));
  const each = (name: FilterName, values: readonly string[]): (readonly [FilterName, string])[] =>
    values.map((value) => [name, value] as const);
  return [
    ['kind', words.kindsMany[facets.kind]],
    ...each(
      'material',
      facets.materials.map((code) => materialName(code, lang)),
    ),
    ...each(
      'colour',
      facets.colours.map((code) => colourName(code, lang)),
    ),
    ['closing', closingName(facets.closing, lang)],
    ['price', priceBand(listedMinor, shop.rules.currency, lang)],
    ['length', lengthBand(shown.finishedLengthMm, lang)],
    ['year', String(facets.year)],
    ['status', words.statuses[facets.status]],
  ];
}

/** The marks by which "can be made to my size" finds it. */
export function sizeMarks(piece: Piece, shop: Shop): readonly Pair[] {
  const fits = fitsOf(piece.design.kind, range(piece.design, shop.rules));
  const made = fits.flatMap(({ of, stretches }) => {
    const marks = marksOf(of, stretches);
    if (marks === null) return [];
    const names = markNames(of);
    const gaps = marks.gaps.map((mm): Pair => [names.gap, String(mm)]);
    return [[names.from, String(marks.from)] as const, [names.to, String(marks.to)] as const, ...gaps];
  });
  const own = fitsReady(piece, shop.rules).flatMap(({ of, stretches }) =>
    stretches.flatMap((stretch) => ownMarks(of, stretch).map((mm): Pair => [markNames(of).own, String(mm)])),
  );
  return [...made, ...own];
}
