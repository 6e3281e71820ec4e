/** Which side the clasp goes, and whether it matters. */
import type { Hand } from '../sizing/rules.ts';

export type HandAdvice = {
  readonly hand: Hand;
  /** Side of the maker's board (the piece seen as on another person) that the clasp goes to; null where either will do. */
  readonly boardSide: 'left' | 'right' | null;
  /** Why it matters, or why not. */
  readonly reason: 'has-front-and-side' | 'no-front' | 'clasp-has-no-side';
};
