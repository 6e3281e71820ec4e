/**
 * The compact form: an order as one word for links, e-mails and QR codes.
 *
 *     claspwise4.<base64url>.end
 *
 * The head names format and version, the tail shows where it stops, so that a
 * cut or wrapped copy is told from a whole one. Between them, in base64url
 * (RFC 4648, 5), stand the document's values in a fixed order as a JSON array
 * in UTF-8 and, in the last four bytes, its CRC-32. Nothing in it is touched by
 * address bars, quoted-printable or the sentence it stands in.
 */
import { crc32 } from './crc32.ts';
import { VERSION, type OrderDocument } from './document.ts';
import { readDocument } from './migrate.ts';
import { fromRow, toRow } from './row.ts';

/** The longest payload that is looked at: three times the largest legal order. */
const MOST_CHARACTERS = 24_000;
const HEAD = `claspwise${VERSION}.`;
const TAIL = '.end';
/**
 * What mail does to long words: line breaks (as an address writes them too, escaped once
 * or more), quote marks (`>` or `|`), soft breaks and escapes of quoted-printable, soft
 * hyphens, zero-width spaces, marks of direction, break tags and their entities.
 */
const UNSEEN = String.raw`\s\u00ad\u200b-\u200f\u202a-\u202e\u2060-\u2069`;
const BREAK = String.raw`<\/?w?br ?\/?>|%(?:25)*(?:0[AD]|20)`;
const GAP = String.raw`[${UNSEEN}>|=]|${BREAK}|&(?:shy|nbsp|gt|#173|#8203);`;
/** A word that may be broken anywhere. */
const broken = (word: string): string => [...word].join(`(?:${GAP})*`);
const FOUND = new RegExp(
  String.raw`${broken('claspwise')}(?:${GAP})*(\d{1,4})(?:${GAP})*\.((?:[\w-]|${GAP})*)(\.(?:${GAP})*${broken('end')})?`,
  'gi',
);
const MANGLED = new RegExp(String.raw`${BREAK}|&[a-z\d#]+;|=(?=\s*[\r\n])|[${UNSEEN}>|]`, 'gi');
const QUOTED_PRINTABLE = /=([\dA-F]{2})/g;

export type TextProblem =
  | { readonly code: 'no-order' }
  | { readonly code: 'cut-off' }
  | { readonly code: 'too-long' }
  | { readonly code: 'newer-version'; readonly version: number }
  | { readonly code: 'unknown-version'; readonly version: number }
  | { readonly code: 'damaged' }
  | { readonly code: 'not-an-order' };

export type Decoded =
  | { readonly ok: true; readonly document: OrderDocument }
  | { readonly ok: false; readonly problem: TextProblem };

/** Writes a document as one word of letters, digits, `-`, `_` and `.`. */
export function encode(document: OrderDocument): string {
  const json = new TextEncoder().encode(JSON.stringify(toRow(document)));
  const bytes = new Uint8Array(json.length + 4);
  bytes.set(json);
  new DataView(bytes.buffer).setUint32(json.length, crc32(json));
  return HEAD + toBase64Url(bytes) + TAIL;
}

/** Reads the first order in a text: the bare form, a link, or a mail with it somewhere inside. */
export function decode(text: string): Decoded {
  return decodeAll(text, 1)[0] ?? refused({ code: 'no-order' });
}

/** Reads every order in a text, in turn, `most` at the utmost. */
export function decodeAll(text: string, most: number): Decoded[] {
  const all: Decoded[] = [];
  for (const match of text.matchAll(FOUND)) {
    if (all.length >= most) break;
    all.push(decodeOne(Number(match[1]), match[2] ?? '', match[3] !== undefined));
  }
  return all;
}

function decodeOne(version: number, mangled: string, whole: boolean): Decoded {
  if (version > VERSION) return refused({ code: 'newer-version', version });
  if (version < 1) return refused({ code: 'unknown-version', version });
  if (mangled.length > MOST_CHARACTERS) return refused({ code: 'too-long' });
  if (!whole) return refused({ code: 'cut-off' });
  const bytes = fromBase64Url(
    mangled
      .replace(MANGLED, '')
      .replace(QUOTED_PRINTABLE, (_, hex: string) => String.fromCharCode(parseInt(hex, 16)))
      .replace(MANGLED, ''),
  );
  if (bytes === null || bytes.length < 5) return refused({ code: 'damaged' });
  const json = bytes.subarray(0, -4);
  const sum = new DataView(bytes.buffer).getUint32(json.length);
  if (sum !== crc32(json)) return refused({ code: 'damaged' });
  const read = readDocument(parse(version, json));
  return read.ok ? read : refused({ code: 'not-an-order' });
}

function parse(version: number, json: Uint8Array): unknown {
  try {
    return fromRow(
      version,
      JSON.parse(new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(json)),
    );
  } catch {
    return null;
  }
}

function refused(problem: TextProblem): Decoded {
  return { ok: false, problem };
}

function toBase64Url(bytes: Uint8Array): string {
  let binary = '';
  for (const byte of bytes) binary += String.fromCharCode(byte);
  return btoa(binary).replace(/\+/g, '-').replace(/\//g, '_').replace(/=+$/, '');
}

function fromBase64Url(text: string): Uint8Array<ArrayBuffer> | null {
  try {
    const binary = atob(text.replace(/-/g, '+').replace(/_/g, '/'));
    return Uint8Array.from(binary, (character) => character.charCodeAt(0));
  } catch {
    return null;
  }
}
