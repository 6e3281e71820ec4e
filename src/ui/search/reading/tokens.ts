/** A query's words, each with its place. */
import { fold, WORD } from './fold.ts';
import type { Place } from './reading.ts';

export type Token = { readonly text: string; readonly key: string; readonly at: Place };

/** A query says no more than this in words; what a pasted page says beyond is left. */
const MOST_TOKENS = 32;

export function tokensOf(text: string): Token[] {
  return [...text.matchAll(WORD)].slice(0, MOST_TOKENS).flatMap((match) => {
    const [word] = match;
    const key = fold(word);
    return key === '' ? [] : [{ text: word, key, at: [match.index, match.index + word.length] as const }];
  });
}
