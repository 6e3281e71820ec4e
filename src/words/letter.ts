/** Letters to the buyer, by language. */
import { letter as de } from './de/letter.ts';
import { letter as en } from './en/letter.ts';
import { inLanguages } from './lang.ts';

export type LetterWords = typeof en;
export const letterWords = inLanguages<LetterWords>({ en, de });
