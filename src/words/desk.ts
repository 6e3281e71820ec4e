/** The desk's answers, by language. */
import { desk as de } from './de/desk.ts';
import { desk as en } from './en/desk.ts';
import { inLanguages } from './lang.ts';

export type DeskWords = typeof en;
export const deskWords = inLanguages<DeskWords>({ en, de });
