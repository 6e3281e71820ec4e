/** The sentences of measuring, by language. */
import { measuring as de } from './de/measuring.ts';
import { measuring as en } from './en/measuring.ts';
import { inLanguages } from './lang.ts';

export type MeasuringWords = typeof en;
export const measuringWords = inLanguages<MeasuringWords>({ en, de });
