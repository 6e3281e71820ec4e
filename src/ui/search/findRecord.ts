/** What the search index keeps of a piece: made with its page, and read from there by what makes the index. */
import { textsOf, type Piece, type Shop } from '#catalogue/model/catalogue.ts';
import { describe, usual } from '#core/sizing/usual.ts';
import type { Lang } from '#words/lang.ts';
import { priceOf } from './figures.ts';
import { listFilters, sizeMarks } from './findFilters.ts';
import { fold, stem } from './reading/fold.ts';
import type { Pair } from './reading/vocabulary.ts';
import { pairsOf } from './vocabulary/pairsOf.ts';
import { pieceWords } from './vocabulary/texts.ts';

export type FindRecord = {
  readonly title: string;
  /** Key of its drawing. */
  readonly picture: string;
  /** Stems of its name, and of the rest. */
  readonly name: readonly string[];
  readonly others: readonly string[];
  readonly filters: readonly Pair[];
  /** By which "can be made to my size" finds it. */
  readonly sizes: readonly Pair[];
  /** By what results are put in order: as it was first made, listed and usually strung. */
  readonly made: string;
  /** Minor units; null for what can't be had any more. */
  readonly priceMinor: number | null;
  readonly lengthMm: number;
};

/** @param picture key of its drawing */
export function findRecord(piece: Piece, shop: Shop, lang: Lang, picture: string): FindRecord {
  const { design, listedMinor, made } = piece;
  const shown = describe(design, shop.rules, listedMinor, usual(design));
  const { name, others } = pieceWords(piece, shop, lang);
  // In the order of their letters the index takes a twentieth less.
  const stems = (words: readonly string[]): string[] =>
    [...new Set(words.map((word) => stem(fold(word), lang)).filter((one) => one !== ''))].sort();
  const named = stems(name);
  return {
    title: textsOf(piece, lang).name,
    picture,
    name: named,
    others: stems(others).filter((one) => !named.includes(one)),
    filters: [...listFilters(piece, shop, lang), ...pairsOf(piece, lang)],
    sizes: sizeMarks(piece, shop),
    made,
    priceMinor: priceOf(piece),
    lengthMm: Math.round(shown.finishedLengthMm),
  };
}
