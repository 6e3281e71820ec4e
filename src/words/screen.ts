/** The sentences of measuring the screen; each language's entry of the island brings its own. */
import type { screen as en } from './en/screen.ts';

export type ScreenWords = typeof en;
