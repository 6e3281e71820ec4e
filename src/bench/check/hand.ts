/** The hand that works the clasp, where nobody was asked for one. */
import type { Sizing } from '#core/sizing/sizing.ts';
import type { OrderDocument } from '#order/document.ts';
import type { Difference } from '#words/difference.ts';
import { handIn } from '#words/orderFacts.ts';

const isSized = (sizing: Sizing) => sizing.status !== 'refused' && sizing.status !== 'outside';

/** True where a piece can be made in that size, and either hand will do. */
export const needsNoHand = (sizing: Sizing): boolean => isSized(sizing) && sizing.hand.boardSide === null;

/** The piece has become another since: its clasp has a side now, and the buyer wasn't asked for hers. */
export function handDifference(document: OrderDocument, sizing: Sizing): Difference[] {
  const asks = isSized(sizing) && sizing.hand.boardSide !== null;
  return asks && handIn(document) === 'either' ? [{ code: 'hand-unasked' }] : [];
}
