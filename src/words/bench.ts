/** The bench's words, by language. */
import { bench as de } from './de/bench.ts';
import { bench as en } from './en/bench.ts';
import { inLanguages } from './lang.ts';

export type BenchWords = typeof en;
export const benchWords = inLanguages<BenchWords>({ en, de });
