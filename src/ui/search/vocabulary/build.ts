/** Makes the shop's vocabulary from its catalogue, at build or as the bench starts. */
import type { Catalogue } from '#catalogue/model/catalogue.ts';
import type { Lang } from '#words/lang.ts';
import { pageWords, searchWords } from '#words/words.ts';
import { wordsOf } from '../reading/fold.ts';
import type { Vocabulary } from '../reading/vocabulary.ts';
import { conceptsOf } from './concepts.ts';
import { inBothLangs, pieceWords, type Reach } from './texts.ts';

/** `slip: meant` between commas, as records. */
const slipsOf = (text: string): Readonly<Record<string, string>> =>
  Object.fromEntries(
    text.split(',').map((pair) => pair.split(':').map((part) => part.trim()) as [string, string]),
  );

export function buildVocabulary(catalogue: Catalogue, lang: Lang, reach: Reach = 'page'): Vocabulary {
  const { pieces, shop } = catalogue;
  const texts = pieces.map((piece) => pieceWords(piece, shop, lang, reach));
  const names = [...new Set(texts.flatMap(({ whole }) => whole))].sort();
  const named = new Set(wordsOf(names.join('\n')));
  const words = new Set(texts.flatMap(({ name, others }) => [...name, ...others]));
  const { said, slips } = searchWords(lang);
  return {
    lang,
    currency: shop.rules.currency,
    ready: pageWords(lang).statuses.available,
    concepts: conceptsOf(catalogue, lang),
    ...inBothLangs(lang),
    slips: {
      ...slipsOf(searchWords('en').slips),
      ...slipsOf(searchWords('de').slips),
      ...slipsOf(slips),
    },
    said,
    words: [...words]
      .filter((word) => !named.has(word))
      .sort()
      .join(' '),
    names: names.join('\n'),
  };
}
