/** What lies finished, once the order book has been asked. */
import type { Piece } from './catalogue.ts';

/** A piece of which the one that lay finished is promised, and when that was ordered (ISO 8601). */
export type Promised = { readonly piece: string; readonly receivedAt: string };

/** The piece as the shop shows it: made to order where the one that lay there is promised. */
export function asPromised<Shown extends Pick<Piece, 'id' | 'status' | 'liesSince'>>(
  piece: Shown,
  promised: readonly Promised[],
): Shown {
  const { id, status, liesSince } = piece;
  const gone = promised.some((one) => one.piece === id && one.receivedAt >= (liesSince ?? ''));
  return status === 'available' && gone ? { ...piece, status: 'to-order' } : piece;
}
