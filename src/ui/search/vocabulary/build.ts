/** Makes the shop's vocabulary from its catalogue, at build or as the bench starts. */
import type { Catalogue } from '#catalogue/model/catalogue.ts';
import type { Lang } from '#words/lang.ts';
import { searchWords } from '#words/words.ts';
import type { Vocabulary } from '../reading/vocabulary.ts';
import { conceptsOf } from './concepts.ts';
import { pairsOf } from './pairsOf.ts';
import { pieceWords, type Reach } from './texts.ts';

const numerically = (values: Iterable<string>): string[] =>
  [...new Set(values)].sort((one, other) => Number(one) - Number(other));

/** `slip: meant` between commas, as records. */
const slipsOf = (text: string): Readonly<Record<string, string>> =>
  Object.fromEntries(
    text.split(',').map((pair) => pair.split(':').map((part) => part.trim()) as [string, string]),
  );

export function buildVocabulary(catalogue: Catalogue, lang: Lang, reach: Reach = 'page'): Vocabulary {
  const { pieces, shop } = catalogue;
  const texts = pieces.map((piece) => pieceWords(piece, shop, lang, reach));
  const words = new Set(texts.flatMap(({ name, others }) => [...name, ...others]));
  const misread = new Set(texts.flatMap((text) => text.misread));
  const pairs = pieces.flatMap((piece) => pairsOf(piece, shop));
  const valuesOf = (name: string): string[] =>
    pairs.filter(([one]) => one === name).map(([, value]) => value);
  const { said, slips } = searchWords(lang);
  return {
    lang,
    currency: shop.rules.currency,
    concepts: conceptsOf(catalogue, lang),
    roles: { en: searchWords('en').roles, de: searchWords('de').roles },
    slips: { ...slipsOf(searchWords('en').slips), ...slipsOf(searchWords('de').slips), ...slipsOf(slips) },
    said,
    words: [...words].sort().join(' '),
    names: [...misread].sort().join('\n'),
    figures: {
      cost: numerically(valuesOf('cost')),
      bead: numerically(valuesOf('bead')),
      year: numerically(pieces.map(({ made }) => made.slice(0, 4))),
    },
  };
}
