/** The picture of a piece that others show when its address is passed on. */
import type { Piece } from '#catalogue/catalogue.ts';
import { cached, keyOf } from './cache.ts';
import { cardDrawing, cardSvg } from './cardDrawing.ts';
import { shareJpeg } from './encode.ts';
import { ENCODING } from './settings.ts';

export const shareName = (piece: Piece): string =>
  `${piece.id}-share-${keyOf(cardDrawing(piece).name, JSON.stringify(ENCODING.jpeg))}.jpeg`;

export const shareBytes = (piece: Piece): Promise<Buffer> =>
  cached(shareName(piece), () => shareJpeg(cardSvg(piece)));
