/** The sentences of the bench card and the terminal, by language. */
import { stringing as de } from './de/stringing.ts';
import { stringing as en } from './en/stringing.ts';
import { inLanguages } from './lang.ts';

export type { NameOf } from './en/stringing.ts';
export type StringingWords = typeof en;
export const stringingWords = inLanguages<StringingWords>({ en, de });
