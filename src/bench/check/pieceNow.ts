/** A piece of the catalogue as it stands, with all that sizing and posting it need. */
import { componentsOf } from '#core/design/alternatives.ts';
import type { Catalogue, Piece, Shop } from '#catalogue/model/catalogue.ts';
import type { Snapshot } from '../book/snapshot.ts';

/** One copy of a piece for as long as piece and rules are the same, so that what is computed of it can be kept by it. */
const copies = new WeakMap<Piece, Snapshot>();

export function snapshotOf(piece: Piece, { rules, post }: Pick<Shop, 'rules' | 'post'>): Snapshot {
  const known = copies.get(piece);
  const postRules = post?.rules ?? null;
  if (known?.rules === rules && known.post === postRules) return known;
  const { id, revision, name, design, listedMinor, alternatives } = piece;
  const offered = componentsOf(alternatives).length > 0;
  const copy = {
    piece: id,
    revision,
    name,
    design,
    rules,
    listedMinor,
    post: postRules,
    ...(offered && { alternatives }),
  };
  copies.set(piece, copy);
  return copy;
}

/** The catalogue's piece by its id; null where there is none. */
export function pieceNow(catalogue: Catalogue, id: string): Snapshot | null {
  const piece = catalogue.pieces.find((one) => one.id === id);
  return piece === undefined ? null : snapshotOf(piece, catalogue.shop);
}
