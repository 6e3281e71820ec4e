/** Orders found in what the maker pastes or drops. */
import type { OrderDocument } from '#order/document.ts';
import type { ArrivalProblem } from '#words/benchCodes.ts';

export type OrderRead =
  | { readonly ok: true; readonly document: OrderDocument }
  | { readonly ok: false; readonly problem: ArrivalProblem };

/** Orders looked at in one text or mailbox: a year of a busy shop. */
export const MOST_ORDERS = 2_000;

/** The largest file that is taken in. */
export const MOST_FILE_MB = 16;
