/** One picture file by its name, without going through all the others: for pages that are made on demand. */
import type { Piece, Shop } from '#catalogue/model/catalogue.ts';
import { lookedFor } from '#catalogue/facts/facets.ts';
import { filesOf, partsOf, shopFiles, type PictureFile } from './files.ts';
import { partStem } from './partDrawing.ts';
import { stemOf } from './photograph.ts';

/** The pieces whose own files may have this name; a name is a stem, a dash and what the file is made of. */
const ownersOf = (pieces: readonly Piece[], name: string): Piece[] =>
  pieces.filter(({ id, pictures }) =>
    [id, ...pictures.map(({ file }) => stemOf(file))].some((stem) => name.startsWith(`${stem}-`)),
  );

/** A piece that has the bead or finding drawn under this name. */
const holderOf = (pieces: readonly Piece[], name: string): Piece | undefined =>
  pieces.find(({ design }) => lookedFor(design).some((part) => name.startsWith(`${partStem(part)}-`)));

/** Null where nothing of these pieces and this shop is shown under the name. */
export async function findPicture(
  pieces: readonly Piece[],
  shop: Shop,
  name: string,
): Promise<PictureFile | null> {
  const isIt = (file: PictureFile): boolean => file.name === name;
  for (const piece of ownersOf(pieces, name)) {
    const found = (await filesOf(piece, shop)).find(isIt);
    if (found !== undefined) return found;
  }
  const holder = holderOf(pieces, name);
  const shared = [...shopFiles(shop), ...(holder === undefined ? [] : partsOf([holder]))];
  return shared.find(isIt) ?? null;
}
