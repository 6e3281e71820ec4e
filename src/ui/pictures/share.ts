/** The picture of a piece that others show when its address is passed on. */
import type { Piece, Shop } from '#catalogue/model/catalogue.ts';
import { usual } from '#core/sizing/usual.ts';
import { expand } from '#core/design/expand.ts';
import { drawShare } from '#draw/drawings/share.ts';
import { cached, keyOf } from './cache.ts';
import { shareJpeg } from './encode.ts';
import { ENCODING, MAKES_PIXELS } from './settings.ts';

function shareSvg({ design, name, summary }: Piece, shop: Shop): string {
  const options = { title: name, description: summary, idPrefix: 'share', name, shop: shop.name };
  return drawShare(design, expand(design, usual(design)), options);
}

/** Its name changes with the piece and not with every stroke of the drawing: others keep the address. */
export const shareName = (piece: Piece): string => `${piece.id}-share-${piece.revision}.jpeg`;

/** Its address; null where the build makes no pixels. */
export const sharePath = (piece: Piece): string | null =>
  MAKES_PIXELS ? `/pictures/${shareName(piece)}` : null;

export function shareBytes(piece: Piece, shop: Shop): Promise<Buffer> {
  const svg = shareSvg(piece, shop);
  return cached(`${keyOf(svg, JSON.stringify(ENCODING.jpeg))}.jpeg`, () => shareJpeg(svg));
}
