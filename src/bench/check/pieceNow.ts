/** A piece of the catalogue as it stands, with all that sizing and posting it need. */
import type { Catalogue, Piece, Shop } from '#catalogue/model/catalogue.ts';
import type { Snapshot } from '../book/snapshot.ts';

export function snapshotOf(piece: Piece, { rules, post }: Pick<Shop, 'rules' | 'post'>): Snapshot {
  const { id, revision, name, design, listedMinor } = piece;
  return { piece: id, revision, name, design, rules, listedMinor, post: post?.rules ?? null };
}

/** The catalogue's piece by its id; null where there is none. */
export function pieceNow(catalogue: Catalogue, id: string): Snapshot | null {
  const piece = catalogue.pieces.find((one) => one.id === id);
  return piece === undefined ? null : snapshotOf(piece, catalogue.shop);
}
