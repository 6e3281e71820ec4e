/** The states that a piece was in when somebody ordered it: each can be looked at and strung again. */
import { prepared, type Book } from './open.ts';
import { named } from './problem.ts';

export type OrderedVersion = {
  /** Id of the newest copy that was kept of it. */
  readonly snapshot: number;
  readonly revision: string;
  /** When it was ordered last, ISO 8601. */
  readonly lastAt: string;
  readonly orders: number;
};

/** Of one piece, last ordered first. Throws BookError. */
export function orderedVersions(book: Book, piece: string): readonly OrderedVersion[] {
  return named(() =>
    prepared(
      book,
      `SELECT max(snapshot.id) AS id, snapshot.revision AS revision,
              max(orders.received_at) AS last_at, count(*) AS orders
       FROM snapshot JOIN orders ON orders.snapshot = snapshot.id
       WHERE snapshot.piece = ?
       GROUP BY snapshot.revision ORDER BY last_at DESC, id DESC`,
    )
      .all(piece)
      .map((row) => ({
        snapshot: Number(row.id),
        revision: String(row.revision),
        lastAt: String(row.last_at),
        orders: Number(row.orders),
      })),
  );
}
