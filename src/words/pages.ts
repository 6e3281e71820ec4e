/** The words of the public pages, by language. */
import { pages as de } from './de/pages.ts';
import { pages as en } from './en/pages.ts';
import { inLanguages } from './lang.ts';

export type PageWords = typeof en;
export const pageWords = inLanguages<PageWords>({ en, de });
