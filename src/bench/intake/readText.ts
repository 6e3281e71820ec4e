/** A pasted text: an e-mail, a link, the compact form, or the JSON document. */
import { readDocument } from '#order/migrate.ts';
import { decodeAll } from '#order/text.ts';
import { utf8 } from '../http/readBody.ts';
import { documentsIn } from './documentsIn.ts';
import { UNSEEN } from './plainText.ts';
import { MOST_ORDERS, NONE, together, whole, type OrderRead } from './orderRead.ts';

/** Every order in a text; one refusal where there is none. */
export function readText(text: string): readonly OrderRead[] {
  const json = parse(text);
  if (json !== undefined) return readJson(json);
  return together([codesIn(text), documentsIn(text, MOST_ORDERS)]);
}

/** Every code in a text, each as whole as it can be had. */
function codesIn(text: string): OrderRead[] {
  let best: OrderRead[] = decodeAll(text, MOST_ORDERS);
  let undone = text;
  for (const undo of UNDOING) {
    if (whole(best) === best.length) break;
    undone = undo(undone);
    const found = decodeAll(undone, MOST_ORDERS);
    const fewerBroken = whole(found) === whole(best) && found.length < best.length;
    if (found.length > 0 && (fewerBroken || whole(found) > whole(best))) best = found;
  }
  return best;
}

/** The address that a mail program writes beside what it takes for a link, in the midst of a code too. */
const LINK_PUT_IN =
  /<(?:https?|mailto):[^<>\s]*>|\((?:https?|mailto):[^()\s]*\)|\[(?:https?|mailto):[^[\]\s]*\]/gi;

const UTF_16 = new TextDecoder('utf-16be');

/** What takes back, one after the other, what only the checksum can tell from letters of the code itself. */
const UNDOING: readonly ((text: string) => string)[] = [
  (text) => text.replace(UNSEEN, '').replace(LINK_PUT_IN, ''),
  withoutMarks,
  // A low line is written as its number by UTF-7 (RFC 2152).
  (text) =>
    text.replace(/\+((?:AF8AXwBf)*(?:AF8(?:AXw)?)?)(?:-|(?![A-Za-z\d+/]))/g, (_, coded: string) =>
      UTF_16.decode(Buffer.from(coded, 'base64')),
    ),
  // Filters of mail write an address inside another, hyphens and low lines by their numbers.
  (text) => text.replaceAll('-5F', '_').replaceAll('-2D', '-'),
];

/** What stands before a code on its first line, in a list or a quotation: `* `, `ZQ> `. */
const MARK_BEFORE = /^[ \t]*(\S.{0,9}?)[ \t]*claspwise/;

/** The text, that mark taken from each line as far as the next code. */
function withoutMarks(text: string): string {
  const parts = text.split(/^(?=.{0,12}claspwise)/m).map((part) => {
    const mark = MARK_BEFORE.exec(part)?.[1];
    if (mark === undefined) return part;
    const lines = part.split('\n').map((line) => line.trimStart());
    return lines.map((line) => (line.startsWith(mark) ? line.slice(mark.length) : line)).join('\n');
  });
  return parts.join('');
}

/**
 * Every order in a file's bytes. Where they are no UTF-8, only a code is believed, since
 * that is plain ASCII with a checksum of its own; a document's names would have holes.
 */
export function readFileText(bytes: Uint8Array): readonly OrderRead[] {
  const text = utf8(bytes);
  if (text !== null && !text.includes('\0')) return readText(text);
  const found = codesInBytes(bytes);
  return found.length === 0 ? [{ ok: false, problem: { code: 'not-utf8' } }] : found;
}

/** Codes in bytes of whatever kind, a character a byte or two; empty where there are none. */
export function codesInBytes(bytes: Uint8Array): OrderRead[] {
  const readings = ['utf-8', 'utf-16le', 'utf-16be'].map((encoding) =>
    codesIn(new TextDecoder(encoding).decode(bytes)),
  );
  return readings.find((one) => one.length > 0) ?? [];
}

/** One document, or a list of them such as the bench's own export. */
function readJson(json: unknown): readonly OrderRead[] {
  if (!Array.isArray(json)) return [readDocument(json)];
  if (json.length === 0) return NONE;
  return json.slice(0, MOST_ORDERS).map((one: unknown) => readDocument(inner(one)));
}

/** In an export the document stands beside its state and history. */
function inner(one: unknown): unknown {
  return typeof one === 'object' && one !== null && 'document' in one ? one.document : one;
}

function parse(text: string): unknown {
  if (!/^\s*[[{]/.test(text)) return undefined;
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return undefined;
  }
}
