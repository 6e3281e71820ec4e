/** What of her pieces buyers don't see yet. */
import type { Piece } from '#catalogue/model/catalogue.ts';

export type PieceMark = 'new' | 'changed';

/** What a piece's page says besides its status; the revision stands for its design and what may be chosen instead, without the names in it. */
function shown({
  name,
  summary,
  story,
  de,
  listedMinor,
  made,
  liesSince,
  revision,
  pictures,
  design,
}: Piece): string {
  const names = design.strands.map(({ sections }) => sections.map((section) => section.name));
  return JSON.stringify([names, name, summary, story, de, listedMinor, made, liesSince, revision, pictures]);
}

/**
 * How the pieces in the files differ from those that are published, by id; none where they don't.
 * @param promised pieces of which the one that lay there is promised: they are published as made to order
 */
export function pieceMarks(
  live: readonly Piece[],
  published: readonly Piece[],
  promised: ReadonlySet<string>,
): ReadonlyMap<string, PieceMark> {
  const before = new Map(published.map((piece) => [piece.id, piece]));
  const marks = live.flatMap((piece): [string, PieceMark][] => {
    const other = before.get(piece.id);
    if (other === undefined) return [[piece.id, 'new']];
    const sameStatus =
      piece.status === other.status || (piece.status === 'available' && promised.has(piece.id));
    return sameStatus && shown(piece) === shown(other) ? [] : [[piece.id, 'changed']];
  });
  return new Map(marks);
}
