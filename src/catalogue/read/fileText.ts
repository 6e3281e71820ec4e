/** The text of an authored file, within bounds and without bytes or signs that nobody can see. */
import { readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { invisibleSign } from '../fields/invisible.ts';
import type { Folder } from './folder.ts';
import { problemOfFile, type Problem } from './problem.ts';

/** A thousand components with all their fields; a pasted export is refused before it is read. */
export const MOST_KILOBYTES = 256;

export type FileText =
  { readonly text: string; readonly problem: null } | { readonly text: null; readonly problem: Problem };

const lineAt = (text: string, offset: number): number => text.slice(0, offset).split('\n').length;

function tooLarge(file: string, bytes: number): Problem | null {
  const kilobytes = Math.ceil(bytes / 1024);
  return kilobytes > MOST_KILOBYTES
    ? problemOfFile(file, { code: 'file-too-large', kilobytes, most: MOST_KILOBYTES })
    : null;
}

/** The bytes of a file that is there, or of the text that stands for it. Throws where there are none. */
function bytesOf({ path, overlay }: Folder, file: string): Uint8Array | Problem {
  const text = overlay.get(file);
  if (text === null) throw Object.assign(new Error('deleted'), { code: 'ENOENT' });
  if (text !== undefined) return tooLarge(file, Buffer.byteLength(text)) ?? Buffer.from(text);
  const whole = join(path, file);
  return tooLarge(file, statSync(whole).size) ?? readFileSync(whole);
}

/** Reads one file of the content folder. Never throws. */
export function fileText(folder: Folder, file: string): FileText {
  const refused = (problem: Problem): FileText => ({ text: null, problem });
  let bytes: Uint8Array | Problem;
  try {
    bytes = bytesOf(folder, file);
  } catch (error) {
    const why = error instanceof Error && 'code' in error ? String(error.code) : 'unknown';
    return refused(problemOfFile(file, { code: 'file-unreadable', why }));
  }
  if ('error' in bytes) return refused(bytes);
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
