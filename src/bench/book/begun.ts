/**
 * A note beside the book that there was one. A file that is gone, or empty, would
 * else be begun anew without a word, and every order in it be missing unseen.
 */
import { existsSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { basename } from 'node:path';

const noteOf = (file: string): string => `${file}.begun`;

/** Notes once that a book lies here. A folder that can't be written is named where the book is. */
export function noteBegun(file: string): void {
  if (existsSync(noteOf(file))) return;
  const text = `${basename(file)} is an order book. Where it is missing, the bench says so as long as this note lies here.\n`;
  try {
    writeFileSync(noteOf(file), text, { mode: 0o600, flag: 'wx' });
  } catch {
    // Without the note all works but the warning.
  }
}

/** True where a book was begun and its file is missing or empty. */
export function isGone(file: string): boolean {
  return existsSync(noteOf(file)) && (!existsSync(file) || statSync(file).size === 0);
}

/** Takes the note away: a new book is begun on purpose. */
export const forgetBegun = (file: string): void => rmSync(noteOf(file), { force: true });
