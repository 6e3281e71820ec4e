/** The text of an authored file, within bounds and without bytes or signs that nobody can see. */
import { readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { invisibleSign } from '../fields/invisible.ts';
import { problemOfFile, type Problem } from './problem.ts';

/** A thousand components with all their fields; a pasted export is refused before it is read. */
export const MOST_KILOBYTES = 256;

export type FileText =
  { readonly text: string; readonly problem: null } | { readonly text: null; readonly problem: Problem };

const lineAt = (text: string, offset: number): number => text.slice(0, offset).split('\n').length;

/** Reads one file of the content folder. Never throws. */
export function fileText(folder: string, file: string): FileText {
  const refused = (problem: Problem): FileText => ({ text: null, problem });
  let bytes: Uint8Array;
  try {
    const path = join(folder, file);
    const kilobytes = Math.ceil(statSync(path).size / 1024);
    if (kilobytes > MOST_KILOBYTES) {
      return refused(problemOfFile(file, { code: 'file-too-large', kilobytes, most: MOST_KILOBYTES }));
    }
    bytes = readFileSync(path);
  } catch (error) {
    const why = error instanceof Error && 'code' in error ? String(error.code) : 'unknown';
    return refused(problemOfFile(file, { code: 'file-unreadable', why }));
  }
  let text: string;
  try {
    // A mark of the byte order at its beginning is taken off by the decoder.
    text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return refused(problemOfFile(file, { code: 'file-not-utf8' }));
  }
  const found = invisibleSign(text);
  if (found === null) return { text, problem: null };
  const { sign, offset } = found;
  return refused({ file, line: lineAt(text, offset), field: '', error: { code: 'invisible-sign', sign } });
}
