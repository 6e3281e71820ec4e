/** A piece laid straight over a ruler of the reader's unit, at its usual size. */
import { textsOf, type Piece } from '#catalogue/model/catalogue.ts';
import { usual } from '#core/sizing/usual.ts';
import { expand } from '#core/design/expand.ts';
import { drawStraight } from '#draw/drawings/straight.ts';
import type { Lang } from '#words/lang.ts';
import { pageWords } from '#words/words.ts';
import type { Described } from './described.ts';
import { cardAlt } from './partsList.ts';

/** @param idPrefix unique on the page */
export function straightDrawing(piece: Piece, lang: Lang, idPrefix: string): Described {
  const title = pageWords(lang).piece.straight(textsOf(piece, lang).name);
  const description = cardAlt(piece, lang);
  const svg = drawStraight(piece.design, expand(piece.design, usual(piece.design)), {
    title,
    description,
    idPrefix,
    unit: lang === 'de' ? 'cm' : 'in',
  });
  return { svg, alt: `${title}. ${description}` };
}
