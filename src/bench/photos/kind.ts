/** What kind of file somebody has chosen as a photograph, by its first bytes: its name may say anything. */

/** `picture`: sharp reads it. `heic`: as telephones write. The others can't be a photograph here. */
export type FileKind = 'picture' | 'heic' | 'drawing' | 'document' | 'archive' | 'film' | 'empty' | 'unknown';

/** Brands of the boxes that HEIC, AVIF and films begin with (ISO/IEC 14496-12, 23008-12; MIAF). */
const AVIF = /^avi[fs]$/;
const HEIC = /^(?:hei[cxms]|hev[cxms]|mif1|msf1|miaf)$/;

function boxKind(bytes: Uint8Array, letters: string): FileKind {
  const length = Math.min(Buffer.from(bytes).readUInt32BE(0), bytes.length, 256);
  const brands = [letters.slice(8, 12)];
  for (let at = 16; at + 4 <= length; at += 4) brands.push(letters.slice(at, at + 4));
  if (brands.some((brand) => AVIF.test(brand))) return 'picture';
  return brands.some((brand) => HEIC.test(brand)) ? 'heic' : 'film';
}

/** The kind of a file. */
export function kindOf(bytes: Uint8Array): FileKind {
  if (bytes.length === 0) return 'empty';
  const letters = Buffer.from(bytes.subarray(0, 1024)).toString('latin1');
  if (letters.startsWith('\xff\xd8\xff') || letters.startsWith('\x89PNG\r\n\x1a\n')) return 'picture';
  if (letters.startsWith('GIF8') || /^(?:II\*\0|MM\0\*)/.test(letters)) return 'picture';
  if (letters.startsWith('RIFF')) return letters.slice(8, 12) === 'WEBP' ? 'picture' : 'film';
  if (letters.slice(4, 8) === 'ftyp' && bytes.length >= 16) return boxKind(bytes, letters);
  if (/<svg[\s>]/i.test(letters)) return 'drawing';
  if (letters.startsWith('%PDF')) return 'document';
  if (/^(?:PK\x03\x04|PK\x05\x06|Rar!|7z\xbc\xaf|\x1f\x8b)/.test(letters)) return 'archive';
  return /^\x1aE\xdf\xa3/.test(letters) ? 'film' : 'unknown';
}
