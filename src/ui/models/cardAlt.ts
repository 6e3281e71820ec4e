/** What a person who doesn't see a piece's drawing should know of it. */
import { designIn, textsOf, type Piece } from '#catalogue/model/catalogue.ts';
import { usual } from '#core/sizing/usual.ts';
import { formatList } from '#words/format.ts';
import type { Lang } from '#words/lang.ts';
import { pageWords } from '#words/words.ts';
import { mainParts } from './partsList.ts';

export function cardAlt(piece: Piece, lang: Lang): string {
  const words = pageWords(lang);
  const parts = mainParts(designIn(piece, lang), usual(piece.design)).map(({ name }) => name);
  return words.piece.pictureAlt(
    textsOf(piece, lang).name,
    words.kinds[piece.design.kind],
    formatList(parts, lang),
  );
}
