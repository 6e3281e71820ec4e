/** Whether a file is a whole picture, judged by its first and last bytes. */
import { closeSync, fstatSync, openSync, readSync } from 'node:fs';
import type { Picture } from '../model/catalogue.ts';

export type PictureState =
  | { readonly state: 'whole'; readonly format: Picture['format'] }
  | { readonly state: 'missing' | 'broken' | 'no-picture' };

// Cameras add padding after the end mark; more than this is no picture's end.
const tailBytes = 64;

function formatOf(head: Buffer): Picture['format'] | null {
  const letters = head.toString('latin1');
  if (letters.startsWith('\xff\xd8\xff')) return 'jpeg';
  if (letters.startsWith('\x89PNG\r\n\x1a\n')) return 'png';
  if (letters.startsWith('RIFF') && letters.slice(8, 12) === 'WEBP') return 'webp';
  if (letters.slice(4, 8) === 'ftyp' && /^avi[fs]/.test(letters.slice(8, 12))) return 'avif';
  return null;
}

// A still picture has four or five top-level boxes; a file with more is no photograph.
const mostBoxes = 64;

/** Where the last box of an AVIF ends, which is past the file's end if it was cut short (ISO/IEC 14496-12, 4.2). */
function boxesEnd(handle: number, size: number): number {
  const head = Buffer.alloc(16);
  let end = 0;
  for (let box = 0; box < mostBoxes && end < size; box += 1) {
    if (readSync(handle, head, 0, head.length, end) < 8) return Infinity;
    const length = head.readUInt32BE(0);
    // 0: to the end of the file. 1: the length follows in eight bytes.
    if (length === 0) return size;
    end += length === 1 ? Number(head.readBigUInt64BE(8)) : Math.max(8, length);
  }
  return end;
}

/** True where the file ends as its format says: end marks (ITU-T T.81, ISO/IEC 15948) or the lengths it states. */
function isWhole(
  format: Picture['format'],
  handle: number,
  head: Buffer,
  tail: Buffer,
  size: number,
): boolean {
  if (format === 'jpeg') return tail.includes(Buffer.from([0xff, 0xd9]));
  if (format === 'png') return tail.includes('IEND');
  if (format === 'webp') return size >= head.readUInt32LE(4) + 8;
  return boxesEnd(handle, size) <= size;
}

/** Looks at a picture file without decoding it. */
export function lookAtPicture(path: string): PictureState {
  let handle: number;
  try {
    handle = openSync(path, 'r');
  } catch {
    return { state: 'missing' };
  }
  try {
    const stat = fstatSync(handle);
    if (!stat.isFile()) return { state: 'missing' };
    const head = Buffer.alloc(12);
    const tail = Buffer.alloc(Math.min(tailBytes, stat.size));
    readSync(handle, head, 0, head.length, 0);
    readSync(handle, tail, 0, tail.length, stat.size - tail.length);
    const format = formatOf(head);
    if (format === null) return { state: 'no-picture' };
    return isWhole(format, handle, head, tail, stat.size) ? { state: 'whole', format } : { state: 'broken' };
  } finally {
    closeSync(handle);
  }
}
