/** The picture of a piece that others show when its address is passed on. */
import { underBase } from '../site/base.ts';
import { textsOf, type Piece, type Shop } from '#catalogue/model/catalogue.ts';
import { usual } from '#core/sizing/usual.ts';
import { expand } from '#core/design/expand.ts';
import { drawShare } from '#draw/drawings/share.ts';
import type { Lang } from '#words/lang.ts';
import { pageWords } from '#words/words.ts';
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
  MAKES_PIXELS ? underBase(`/pictures/${shareName(piece)}`) : null;

/** A share picture's address and what it shows, in words. */
export type SharePicture = { readonly src: string; readonly alt: string };

/** The share picture of a piece; null where there is no piece, or the build makes no pixels. */
export function sharePicture(piece: Piece | undefined, lang: Lang): SharePicture | null {
  const src = piece === undefined ? null : sharePath(piece);
  if (piece === undefined || src === null) return null;
  const words = pageWords(lang);
  return { src, alt: words.piece.share(textsOf(piece, lang).name, words.kinds[piece.design.kind]) };
}

/** Changes with what is in it, where the program is the same. */
export const shareKey = ({ design, name, summary }: Piece, shop: Shop): string =>
  keyOf(JSON.stringify([design, name, summary, shop.name]));

export function shareBytes(piece: Piece, shop: Shop): Promise<Buffer> {
  const svg = shareSvg(piece, shop);
  return cached(`${keyOf(svg, JSON.stringify(ENCODING.jpeg))}.jpeg`, () => shareJpeg(svg));
}
