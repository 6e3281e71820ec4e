/** The piece that lies finished, as an order takes it: at its usual counts, nothing asked. */
import type { ShownUnit } from '#core/units/unit.ts';
import type { Candidate } from '#core/sizing/sizing.ts';
import type { Lang } from '#words/lang.ts';
import type { PieceForSizer, ShopForSizer } from '../../model/input.ts';
import type { OrderItem } from './item.ts';

/** @param piece as listed, `candidate` at its usual counts. */
export function readyItem(
  piece: PieceForSizer,
  candidate: Candidate,
  { post }: Pick<ShopForSizer, 'post'>,
  lang: Lang,
  unit: ShownUnit,
): OrderItem {
  // To the hundredth, as every length in an order.
  const mm = Math.round(candidate.finishedLengthMm * 100) / 100;
  return {
    made: 'ready',
    parts: { clasp: '', pendant: '' },
    choice: { measure: { of: 'length', mm }, sit: 'easy', hand: 'right', pick: 'best', quantity: 1 },
    // Nobody is asked of a piece that lies there.
    eitherHand: false,
    text: '',
    ...{ piece, lang, unit, candidate, post },
  };
}
