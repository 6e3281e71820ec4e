/** The terminal's sentences, by language. */
import { terminal as de } from './de/terminal.ts';
import { terminal as en } from './en/terminal.ts';
import { inLanguages } from './lang.ts';

export type TerminalWords = typeof en;
export const terminalWords = inLanguages<TerminalWords>({ en, de });
