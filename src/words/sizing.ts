/** The sizing sentences, by language. */
import { sizing as de } from './de/sizing.ts';
import { sizing as en } from './en/sizing.ts';
import { inLanguages } from './lang.ts';

export type SizingWords = typeof en;
export const sizingWords = inLanguages<SizingWords>({ en, de });
