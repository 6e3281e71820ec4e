/** The slip's sentences, by language. */
import { slip as de } from './de/slip.ts';
import { slip as en } from './en/slip.ts';
import { inLanguages } from './lang.ts';

export type SlipWords = typeof en;
export const slipWords = inLanguages<SlipWords>({ en, de });
