/** In which order pieces are shown. */
import type { Piece } from './catalogue.ts';

/** Newest first; what was made at the same time goes by its short name. */
export function newestFirst(one: Piece, other: Piece): number {
  if (one.made !== other.made) return one.made < other.made ? 1 : -1;
  return one.id < other.id ? -1 : 1;
}
