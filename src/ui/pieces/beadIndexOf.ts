/** The bead index of a catalogue, made once for all its pages. */
import type { Piece } from '#catalogue/catalogue.ts';
import { beadIndex, type BeadIndex } from '#catalogue/related.ts';

const known = new WeakMap<readonly Piece[], BeadIndex>();

export function beadIndexOf(pieces: readonly Piece[]): BeadIndex {
  const found = known.get(pieces) ?? beadIndex(pieces);
  known.set(pieces, found);
  return found;
}
