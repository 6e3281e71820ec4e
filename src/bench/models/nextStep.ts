/** What usually comes next with an order, and the message that goes with it. */
import type { Letter, OrderState } from '#words/benchCodes.ts';
import type { Entry } from '../book/entry.ts';
import type { Recheck } from '../check/recheck.ts';

export type NextStep = {
  readonly state: OrderState;
  /** Null where nobody is left to write to. */
  readonly letter: Letter | null;
};

const USUAL: Readonly<Record<OrderState, { readonly state: OrderState; readonly letter: Letter } | null>> = {
  new: { state: 'agreed', letter: 'agreed' },
  asked: { state: 'agreed', letter: 'agreed' },
  agreed: { state: 'strung', letter: 'ready' },
  strung: { state: 'sent', letter: 'sent' },
  sent: null,
  cancelled: null,
};

/** The next step; null where the order is done with. A new order that differs from what the buyer saw is asked about first. */
export function nextStep({ state, erasedAt }: Entry, { differences }: Recheck): NextStep | null {
  const asks = state === 'new' && differences.length > 0;
  const usual = asks ? ({ state: 'asked', letter: 'question' } as const) : USUAL[state];
  return usual === null || erasedAt === null ? usual : { ...usual, letter: null };
}
