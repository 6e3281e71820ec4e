/**
 * The drawing that stands for a piece where it has no photograph, as SVG and
 * as pixels. By bytes the SVG would do (2 to 4 KB as a host compresses it,
 * WebP at 800 px 8 to 17), but a phone lays out and paints each one's thousand
 * elements on the thread that scrolls. So lists show pixels, as a piece's own
 * page does on a narrow screen; on a wide one it shows the SVG, sharp at any
 * size. WebP, because AVIF takes half a second of a processor for each.
 */
import { underBase } from '../site/base.ts';
import type { Piece } from '#catalogue/model/catalogue.ts';
import { usual } from '#core/sizing/usual.ts';
import { expand } from '#core/design/expand.ts';
import { CARD_BOX, drawCard } from '#draw/drawings/card.ts';
import { cached, keyOf } from './cache.ts';
import { drawnKey } from './drawnKeys.ts';
import { rasterise } from './encode.ts';
import { CARD_WIDTHS, ENCODING, MAKES_PIXELS, PHONE_WIDTHS } from './settings.ts';

export type Pixels = { readonly name: string; readonly width: number };

export type Drawing = {
  /** Changes with what is drawn; every file of it is named by the piece's id and this. */
  readonly key: string;
  /** File name of the SVG. */
  readonly name: string;
  readonly width: number;
  readonly height: number;
  /** WebP, narrowest first; none where the build leaves pixels out. */
  readonly pixels: readonly Pixels[];
};

/** The picture of a piece in lists and at the head of its page, as SVG text. */
export function cardSvg(piece: Piece): string {
  const { design, name, summary } = piece;
  const caption = { title: name, description: summary, idPrefix: 'card' };
  return drawCard(design, expand(design, usual(design)), caption);
}

const WIDTHS = [...new Set([...CARD_WIDTHS, ...PHONE_WIDTHS])];

const known = new WeakMap<Piece, Drawing>();

/** File names and shape of a piece's drawing; the names change with what is drawn. */
export function cardDrawing(piece: Piece): Drawing {
  const found = known.get(piece);
  if (found !== undefined) return found;
  const { design, name, summary } = piece;
  const key = drawnKey(JSON.stringify([design, name, summary]), () =>
    keyOf(cardSvg(piece), JSON.stringify(ENCODING.webp)),
  );
  const stem = `${piece.id}-${key}`;
  const widths = MAKES_PIXELS ? WIDTHS : [];
  const pixels = widths.map((width) => ({ name: `${stem}-${width}.webp`, width }));
  const drawing = { key, name: `${stem}.svg`, width: CARD_BOX.width, height: CARD_BOX.height, pixels };
  known.set(piece, drawing);
  return drawing;
}

export function pixelBytes(piece: Piece, { name, width }: Pixels): Promise<Buffer> {
  return cached(name, () => rasterise(cardSvg(piece), width, 'webp'));
}

/** `srcset` of the pixels of these widths; empty where there are none. */
export const pixelSet = ({ pixels }: Drawing, widths: readonly number[]): string =>
  pixels
    .filter(({ width }) => widths.includes(width))
    .map(({ name, width }) => `${underBase(`/pictures/${name}`)} ${width}w`)
    .join(', ');
