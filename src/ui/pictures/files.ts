/** All picture files of the catalogue: what the picture route writes. */
import type { Piece, Shop } from '#catalogue/model/catalogue.ts';
import { lookedFor } from '#catalogue/facts/facets.ts';
import { cardDrawing, cardSvg, pixelBytes } from './cardDrawing.ts';
import { inTurn } from './inTurn.ts';
import { partDrawing } from './partDrawing.ts';
import { photograph, photographBytes } from './photograph.ts';
import { AT_ONCE, MAKES_PIXELS, MEDIA_TYPES } from './settings.ts';
import { shareBytes, shareKey, shareName } from './share.ts';
import { shopShareBytes, shopShareName } from './shopShare.ts';

export type PictureFile = {
  readonly name: string;
  readonly type: string;
  /** Changes with what is in it, where the program is the same: the name itself, of all that are named by that. */
  readonly key: string;
  readonly bytes: () => Promise<Buffer>;
};

async function photographsOf(piece: Piece): Promise<PictureFile[]> {
  const shots = await Promise.all(
    piece.pictures.map(async (picture) => ({ picture, shot: await photograph(picture) })),
  );
  return shots.flatMap(({ picture, shot }) =>
    shot.files.map((file) => ({
      name: file.name,
      key: file.name,
      type: MEDIA_TYPES[file.format],
      bytes: () => photographBytes(picture, file),
    })),
  );
}

function drawingsOf(piece: Piece, shop: Shop): PictureFile[] {
  const drawing = cardDrawing(piece);
  const svg = {
    name: drawing.name,
    key: drawing.name,
    type: MEDIA_TYPES.svg,
    bytes: () => Promise.resolve(Buffer.from(cardSvg(piece))),
  };
  if (!MAKES_PIXELS) return [svg];
  const share = {
    name: shareName(piece),
    key: shareKey(piece, shop),
    type: MEDIA_TYPES.jpeg,
    bytes: () => shareBytes(piece, shop),
  };
  const pixels = drawing.pixels.map((one) => ({
    name: one.name,
    key: one.name,
    type: MEDIA_TYPES.webp,
    bytes: () => pixelBytes(piece, one),
  }));
  return [svg, share, ...pixels];
}

/** Each bead and finding once, however many pieces have it. */
export function partsOf(pieces: readonly Piece[]): PictureFile[] {
  const drawn = pieces.flatMap(({ design }) =>
    lookedFor(design).map((component) => partDrawing(design, component)),
  );
  const once = new Map(drawn.map(({ name, svg }) => [name, svg]));
  return [...once].map(([name, svg]) => ({
    name,
    key: name,
    type: MEDIA_TYPES.svg,
    bytes: () => Promise.resolve(Buffer.from(svg)),
  }));
}

/** The shop's own. */
export function shopFiles(shop: Shop): PictureFile[] {
  if (!MAKES_PIXELS) return [];
  const name = shopShareName(shop);
  return [{ name, key: name, type: MEDIA_TYPES.jpeg, bytes: () => shopShareBytes(shop) }];
}

/** All files that are of one piece alone. */
export async function filesOf(piece: Piece, shop: Shop): Promise<PictureFile[]> {
  return [...drawingsOf(piece, shop), ...(await photographsOf(piece))];
}

/**
 * Every picture file.
 * @param encodeNow true: fills the cache two pictures at once before it answers, as a build wants it
 */
export async function pictureFiles(
  pieces: readonly Piece[],
  shop: Shop,
  encodeNow: boolean,
): Promise<PictureFile[]> {
  const ofPieces = (await inTurn(pieces, AT_ONCE, (piece) => filesOf(piece, shop))).flat();
  const files = [...ofPieces, ...partsOf(pieces), ...shopFiles(shop)];
  if (encodeNow) {
    const encoded = files.filter(({ type }) => type !== MEDIA_TYPES.svg);
    await inTurn(encoded, AT_ONCE, async (file) => void (await file.bytes()));
  }
  return files;
}
