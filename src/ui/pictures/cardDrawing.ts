/** The drawing that stands for a piece where it has no photograph. */
import type { Piece } from '#catalogue/catalogue.ts';
import { expand } from '#core/strand/expand.ts';
import { usual } from '#core/sizing/usual.ts';
import { drawStraight } from '#draw/view/straight.ts';
import { keyOf } from './cache.ts';

export type Drawing = { readonly name: string; readonly width: number; readonly height: number };

/** The picture of a piece in lists and at the head of its page, as SVG text. */
export function cardSvg(piece: Piece): string {
  return drawStraight(piece.design, expand(piece.design, usual(piece.design)), {
    title: piece.name,
    description: piece.summary,
    idPrefix: 'card',
    unit: 'in',
  });
}

const known = new WeakMap<Piece, Drawing>();

/** File name and shape of a piece's drawing; the name changes with what is drawn. */
export function cardDrawing(piece: Piece): Drawing {
  const found = known.get(piece);
  if (found !== undefined) return found;
  const svg = cardSvg(piece);
  const drawing = { name: `${piece.id}-${keyOf(svg)}.svg`, ...shapeOf(svg) };
  known.set(piece, drawing);
  return drawing;
}

/** Width and height of a drawing's view box, in its own unit. */
export function shapeOf(svg: string): { readonly width: number; readonly height: number } {
  const [, width = '1', height = '1'] = /viewBox="\S+ \S+ (\S+) (\S+)"/.exec(svg) ?? [];
  return { width: Math.round(Number(width)), height: Math.round(Number(height)) };
}
