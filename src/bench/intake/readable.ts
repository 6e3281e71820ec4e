/** What was pasted or dropped as plain text in UTF-8, whatever it was wrapped in. */
import { utf8 } from '../http/readBody.ts';
import { mailtoText } from './mailtoText.ts';
import { isHtml, withoutMarkup } from './withoutMarkup.ts';

/** A text without its wrapping: a `mailto:` address as its e-mail, a page as its lines. Other text as it is. */
export function readableText(text: string): string {
  return mailtoText(text) ?? (isHtml(text) ? withoutMarkup(text) : text);
}

/** The same for a file, of UTF-16 too where it begins with a byte order mark; bytes that are no text as they are. */
export function readableBytes(bytes: Uint8Array): Uint8Array {
  const wide = utf16(bytes);
  const text = wide ?? utf8(bytes);
  if (text === null) return bytes;
  const readable = readableText(text);
  return wide === null && readable === text ? bytes : new TextEncoder().encode(readable);
}

/** Text of a file that begins with UTF-16's byte order mark (The Unicode Standard, 23.8); null for another, or a broken one. */
function utf16(bytes: Uint8Array): string | null {
  const [first, second] = bytes;
  const encoding =
    first === 0xff && second === 0xfe ? 'utf-16le' : first === 0xfe && second === 0xff ? 'utf-16be' : null;
  if (encoding === null) return null;
  try {
    return new TextDecoder(encoding, { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}
