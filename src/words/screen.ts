/** The sentences of measuring the screen, by language. */
import { screen as de } from './de/screen.ts';
import { screen as en } from './en/screen.ts';
import { inLanguages } from './lang.ts';

export type ScreenWords = typeof en;
export const screenWords = inLanguages<ScreenWords>({ en, de });
