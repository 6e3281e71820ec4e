/** A piece of the catalogue as it stands, with all that sizing it needs. */
import type { Catalogue, Piece } from '#catalogue/model/catalogue.ts';
import type { Rules } from '#core/design/rules.ts';
import type { Snapshot } from '../book/snapshot.ts';

export function snapshotOf(piece: Piece, rules: Rules): Snapshot {
  const { id, revision, name, design, listedMinor } = piece;
  return { piece: id, revision, name, design, rules, listedMinor };
}

/** The catalogue's piece by its id; null where there is none. */
export function pieceNow(catalogue: Catalogue, id: string): Snapshot | null {
  const piece = catalogue.pieces.find((one) => one.id === id);
  return piece === undefined ? null : snapshotOf(piece, catalogue.shop.rules);
}
