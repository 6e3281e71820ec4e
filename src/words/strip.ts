/** The words of the measuring strip, by language. */
import { strip as de } from './de/strip.ts';
import { strip as en } from './en/strip.ts';
import { inLanguages } from './lang.ts';

export type StripPageWords = typeof en;
export const stripWords = inLanguages<StripPageWords>({ en, de });
