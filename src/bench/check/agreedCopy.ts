/** The piece as an order was agreed on: what is strung and taken for it, whatever becomes of the piece's file after. */
import type { Entry } from '../book/entry.ts';
import type { Book } from '../book/open.ts';
import { findSnapshot, type Snapshot } from '../book/snapshot.ts';

/**
 * @param plain the piece as it stands now; null where the catalogue has none
 * @returns null where it stands now as it did then, where nothing is agreed, and in orders that were agreed before
 *   the book kept it. Throws BookError.
 */
export function agreedCopy(
  book: Book,
  { agreedSnapshotId }: Pick<Entry, 'agreedSnapshotId'>,
  plain: Snapshot | null,
): Snapshot | null {
  const copy = agreedSnapshotId === null ? null : findSnapshot(book, agreedSnapshotId);
  return copy?.revision === plain?.revision ? null : copy;
}
