/** A message taken apart (RFC 5322, 2045), within bounds. */
import PostalMime, { type Email } from 'postal-mime';

/** Nested parts and header bytes that a real mail never has. */
const LIMITS = { maxNestingDepth: 20, maxHeadersSize: 256 * 1024 };

/** The message; null for bytes that can't be read as one. */
export async function parseMail(bytes: Uint8Array): Promise<Email | null> {
  try {
    return await PostalMime.parse(bytes, LIMITS);
  } catch {
    return null;
  }
}
