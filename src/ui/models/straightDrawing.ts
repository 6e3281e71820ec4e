/** A piece laid straight over a ruler of the reader's unit, at its usual size. */
import { textsOf, type Piece } from '#catalogue/model/catalogue.ts';
import { usual } from '#core/sizing/usual.ts';
import { expand } from '#core/design/expand.ts';
import { drawStraight } from '#draw/drawings/straight.ts';
import type { Lang } from '#words/lang.ts';
import { pageWords } from '#words/words.ts';
import { cardAlt } from './partsList.ts';

/** @param idPrefix unique on the page */
export function straightDrawing(piece: Piece, lang: Lang, idPrefix: string): string {
  return drawStraight(piece.design, expand(piece.design, usual(piece.design)), {
    title: pageWords(lang).piece.straight(textsOf(piece, lang).name),
    description: cardAlt(piece, lang),
    idPrefix,
    unit: lang === 'de' ? 'cm' : 'in',
  });
}
