/** Pieces with the same beads. */
import type { Piece } from './catalogue.ts';
import { sharesOf } from './facets.ts';

/** Pieces by the components strung or hung in them. */
export type BeadIndex = ReadonlyMap<string, readonly Piece[]>;

export function beadIndex(pieces: readonly Piece[]): BeadIndex {
  const index = new Map<string, Piece[]>();
  for (const piece of pieces) {
    for (const { component } of sharesOf(piece.design)) {
      const list = index.get(component.id);
      if (list === undefined) index.set(component.id, [piece]);
      else list.push(piece);
    }
  }
  return index;
}

// The newest that share a bead are enough to choose from, and keep ten thousand pieces cheap.
const mostPerBead = 60;

/**
 * Up to `most` other pieces with beads in common, nearest first: what both
 * show much of counts for more, and so does a bead that few pieces have.
 */
export function relatedPieces(piece: Piece, index: BeadIndex, most: number): readonly Piece[] {
  const scores = new Map<Piece, number>();
  for (const { component, share } of sharesOf(piece.design)) {
    const others = index.get(component.id) ?? [];
    for (const other of others.slice(0, mostPerBead)) {
      if (other.id === piece.id) continue;
      scores.set(other, (scores.get(other) ?? 0) + share / others.length);
    }
  }
  return [...scores]
    .sort(([one, a], [other, b]) => b - a || (one.id < other.id ? -1 : 1))
    .slice(0, most)
    .map(([other]) => other);
}
