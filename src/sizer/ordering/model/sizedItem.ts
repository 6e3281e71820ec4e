/** The piece in her size, as an order takes it. */
import type { Lang } from '#words/lang.ts';
import type { PieceForSizer, ShopForSizer } from '../../model/input.ts';
import { canOrder, choiceOf, shownOf, sizedOf, type Outcome } from '../../model/outcome.ts';
import type { SizerState } from '../../model/sizerState.ts';
import type { OrderItem } from './item.ts';

/** What would be ordered now; null where there is nothing to order. */
export function sizedItem(
  piece: PieceForSizer,
  { post }: Pick<ShopForSizer, 'post'>,
  lang: Lang,
  state: SizerState,
  outcome: Outcome,
): OrderItem | null {
  const choice = choiceOf(state);
  const candidate = shownOf(outcome);
  const sized = sizedOf(outcome);
  if (!canOrder(outcome) || candidate === null || 'code' in choice) return null;
  return {
    made: 'to-measure',
    parts: state.parts,
    piece,
    lang,
    choice,
    eitherHand: sized !== null && sized.status !== 'outside' && sized.hand.boardSide === null,
    text: state.text,
    unit: state.unit,
    candidate,
    post,
  };
}
