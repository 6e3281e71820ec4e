/** How it stands with the piece that lies finished, as it is told beside an order for it. */
import type { Piece } from '#catalogue/model/catalogue.ts';
import type { OrderDocument } from '#order/document.ts';
import type { OrderState } from '#words/benchCodes.ts';
import type { Difference } from '#words/difference.ts';
import type { Book } from '../book/open.ts';
import { hasNumber } from '../book/entry.ts';
import { readyEntries, readyStanding, type ReadyStanding } from '../book/ready.ts';

type Shelf = Pick<Piece, 'status' | 'liesSince'> | undefined;

/**
 * The standing of an order for a piece as it lies; null for one that is strung for its buyer. Throws BookError.
 * @param piece as the catalogue has it now; undefined where it has none
 */
export function standingOf(
  book: Book,
  document: OrderDocument,
  receivedAt: string,
  piece: Shelf,
): ReadyStanding | null {
  if (document.made !== 'ready') return null;
  const own = { number: document.number, receivedAt };
  const standing = readyStanding(readyEntries(book), document.piece.id, own, piece?.liesSince ?? null);
  if (standing.is !== 'gone' && piece?.status !== 'available') return { is: 'gone', number: '' };
  return standing;
}

/** The same as a difference, only while nothing is agreed: whoever has it agreed has it. */
export function readyDifferences(standing: ReadyStanding | null, state: OrderState): Difference[] {
  if (standing === null || standing.is === 'lies' || (state !== 'new' && state !== 'asked')) return [];
  const { number } = standing;
  return [standing.is === 'gone' ? { code: 'ready-gone', number } : { code: 'asked-before', number }];
}

/** The standing that the desk goes by: an order that is in the book already keeps the receipt it had. Throws BookError. */
export function deskStanding(
  book: Book,
  document: OrderDocument,
  at: string,
  pieces: readonly Piece[],
): ReadyStanding | null {
  if (document.made !== 'ready' || hasNumber(book, document.number)) return null;
  return standingOf(
    book,
    document,
    at,
    pieces.find(({ id }) => id === document.piece.id),
  );
}
