/** Headings of the bench card and the other sheets, by language. */
import { benchCard as de } from './de/benchCard.ts';
import { benchCard as en } from './en/benchCard.ts';
import { inLanguages } from './lang.ts';

export type BenchCardWords = typeof en;
export const benchCardWords = inLanguages<BenchCardWords>({ en, de });
