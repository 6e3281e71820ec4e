import { fold, WORD } from './fold.ts';

/** The folded words of a term, joined. */
export const keyOf = (term: string): string =>
  (term.toLowerCase().match(WORD) ?? []).map((word) => fold(word)).join('');
