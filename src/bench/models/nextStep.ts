/** What usually comes next with an order, and the message that goes with it. */
import type { Shop } from '#catalogue/model/catalogue.ts';
import type { Letter, OrderState } from '#words/benchCodes.ts';
import type { Entry } from '../book/entry.ts';
import type { Recheck } from '../check/recheck.ts';

/** What has to be asked first: it differs from what the buyer saw, or nobody knows where it goes. */
export type Doubt = 'differs' | 'no-address';

export type NextStep = {
  readonly state: OrderState;
  /** Null where nobody is left to write to. */
  readonly letter: Letter | null;
  readonly doubt: Doubt | null;
};

type Usual = { readonly state: OrderState; readonly letter: Letter } | null;

const USUAL: Readonly<Record<OrderState, Usual>> = {
  new: { state: 'agreed', letter: 'agreed' },
  asked: { state: 'agreed', letter: 'agreed' },
  agreed: { state: 'strung', letter: 'ready' },
  strung: { state: 'sent', letter: 'sent' },
  sent: null,
  cancelled: null,
};
const ASKED_BY: Readonly<Record<Doubt, Letter>> = { differs: 'question', 'no-address': 'address' };

/** The next step; null where the order is done with. Of a new order what is in doubt is asked first. */
export function nextStep(entry: Entry, checked: Recheck, shop: Pick<Shop, 'post'>): NextStep | null {
  const doubt = entry.state === 'new' ? doubtOf(entry, checked, shop) : null;
  const usual: Usual = doubt === null ? usualOf(entry) : { state: 'asked', letter: ASKED_BY[doubt] };
  return usual === null ? null : { ...usual, ...(entry.erasedAt !== null && { letter: null }), doubt };
}

/** What lies finished isn't strung. */
function usualOf({ state, document }: Entry): Usual {
  return state === 'agreed' && document.made === 'ready' ? USUAL.strung : USUAL[state];
}

function doubtOf({ document }: Entry, { differences }: Recheck, { post }: Pick<Shop, 'post'>): Doubt | null {
  if (differences.length > 0) return 'differs';
  return post !== null && document.delivery.by === 'unsaid' ? 'no-address' : null;
}
