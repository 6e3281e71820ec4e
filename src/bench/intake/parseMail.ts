/** A message taken apart (RFC 5322, 2045), within bounds. */
import PostalMime, { type Email } from 'postal-mime';

/** Nested parts and header bytes that a real mail never has. */
const LIMITS = { maxNestingDepth: 20, maxHeadersSize: 256 * 1024 };
/** Lines of text at the utmost: the parser's time grows with their square, to some seconds by here. */
const MOST_LINES = 50_000;
/** The beginning of a line, but not of one of an attached file in base64 (RFC 2045, 6.8). */
const LINE = /\n(?![A-Za-z\d+/]{60,76}\r?\n)/g;

/** The message; null for bytes that can't be read as one. */
export async function parseMail(bytes: Uint8Array): Promise<Email | null> {
  if ((Buffer.from(bytes).toString('latin1').match(LINE) ?? []).length > MOST_LINES) return null;
  try {
    return await PostalMime.parse(bytes, LIMITS);
  } catch {
    return null;
  }
}
