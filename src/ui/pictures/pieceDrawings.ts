/**
 * The drawings further down a piece's page, as files beside it: laid straight with a ruler, and as it is worn. Within
 * the page they would be a third of its bytes and elements, read and laid out before anybody has come to them.
 */
import { textsOf, type Piece, type Shop } from '#catalogue/model/catalogue.ts';
import { describe, usual } from '#core/sizing/usual.ts';
import type { Lang } from '#words/lang.ts';
import { straightDrawing } from '../models/straightDrawing.ts';
import { wornDrawing } from '../models/wornDrawing.ts';
import { address } from '../site/addresses.ts';
import { alone, shapeOf, type Shape } from './alone.ts';

/** Each names its file. */
export const DRAWN = ['straight', 'worn'] as const;
export type Drawn = (typeof DRAWN)[number];

export const isDrawn = (name: string | undefined): name is Drawn => DRAWN.some((one) => one === name);

export type PieceDrawing = Shape & {
  readonly src: string;
  readonly alt: string;
  /** What stands under it; none under the one with a ruler. */
  readonly note: string;
};

function draw(drawn: Drawn, piece: Piece, { rules }: Shop, lang: Lang) {
  if (drawn === 'straight') return { ...straightDrawing(piece, lang, drawn), note: '' };
  const { design, listedMinor } = piece;
  const asShown = describe(design, rules, listedMinor, usual(design));
  return wornDrawing(piece, textsOf(piece, lang).name, rules, asShown, lang);
}

/** What a page shows of it. */
export function pieceDrawing(drawn: Drawn, piece: Piece, shop: Shop, lang: Lang): PieceDrawing {
  const { svg, alt, note } = draw(drawn, piece, shop, lang);
  return { src: `${address(lang, 'pieces', piece.id)}${drawn}.svg`, ...shapeOf(svg), alt, note };
}

/** The file's text. */
export const pieceDrawingSvg = (drawn: Drawn, piece: Piece, shop: Shop, lang: Lang): string =>
  alone(draw(drawn, piece, shop, lang).svg);
