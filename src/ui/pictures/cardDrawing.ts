/**
 * The drawing that stands for a piece where it has no photograph. It stays SVG:
 * 2 to 4 KB as a host compresses it, where AVIF at 800 px takes 7 to 12 and
 * half a second to encode, and it is sharp at any size and in print.
 */
import type { Piece } from '#catalogue/catalogue.ts';
import { expand } from '#core/strand/expand.ts';
import { usual } from '#core/sizing/usual.ts';
import { CARD_BOX, drawCard } from '#draw/view/card.ts';
import { keyOf } from './cache.ts';

export type Drawing = { readonly name: string; readonly width: number; readonly height: number };

/** The picture of a piece in lists and at the head of its page, as SVG text. */
export function cardSvg(piece: Piece): string {
  const { design, name, summary } = piece;
  const caption = { title: name, description: summary, idPrefix: 'card' };
  return drawCard(design, expand(design, usual(design)), caption);
}

const known = new WeakMap<Piece, Drawing>();

/** File name and shape of a piece's drawing; the name changes with what is drawn. */
export function cardDrawing(piece: Piece): Drawing {
  const found = known.get(piece);
  if (found !== undefined) return found;
  const { width, height } = CARD_BOX;
  const drawing = { name: `${piece.id}-${keyOf(cardSvg(piece))}.svg`, width, height };
  known.set(piece, drawing);
  return drawing;
}
