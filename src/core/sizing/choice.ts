/** What a buyer chooses, in the core's own units. */
import type { Hand, Sit } from './rules.ts';

/**
 * `wrist`, `ankle` and `neck` are girths of the body, tape snug and not tight.
 * `length` is a finished length (necklaces only).
 */
export type Measure =
  | { readonly of: 'wrist' | 'ankle' | 'neck'; readonly mm: number }
  | { readonly of: 'length'; readonly mm: number };

/** Which piece to take where none meets the tolerance: the one below or above. `best` is the optimum. */
export type Pick = 'best' | 'below' | 'above';

export type Choice = {
  readonly measure: Measure;
  /** Ignored for a finished length. */
  readonly sit: Sit;
  /** The hand that works the clasp. */
  readonly hand: Hand;
  readonly pick: Pick;
  /** Pieces wanted, a whole number from 1. */
  readonly quantity: number;
};
