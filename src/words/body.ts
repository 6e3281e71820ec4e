/** The body chart's sentences, by language. */
import { body as de } from './de/body.ts';
import { body as en } from './en/body.ts';
import { inLanguages } from './lang.ts';

export type BodyWords = typeof en;
export const bodyWords = inLanguages<BodyWords>({ en, de });
