/** A pasted text: an e-mail, a link, the compact form, or the JSON document. */
import { readDocument } from '#order/migrate.ts';
import { decodeAll } from '#order/text.ts';
import { utf8 } from '../http/readBody.ts';
import { MOST_ORDERS, type OrderRead } from './orderRead.ts';

/** Every order in a text; one refusal where there is none. */
export function readText(text: string): OrderRead[] {
  const json = parse(text);
  if (json !== undefined) return readJson(json);
  const found = decodeAll(text, MOST_ORDERS);
  if (found.length === 0) return [{ ok: false, problem: { code: 'no-order' } }];
  if (whole(found) === found.length) return found;
  const unlinked = decodeAll(text.replace(LINK_PUT_IN, ''), MOST_ORDERS);
  return unlinked.length > 0 && whole(unlinked) >= whole(found) ? unlinked : found;
}

const whole = (found: readonly OrderRead[]): number => found.filter((one) => one.ok).length;

/** The address that a mail program writes behind what it takes for a link, in the midst of a code too. */
const LINK_PUT_IN = /<(?:https?|mailto):[^<>\s]*>/gi;

/**
 * Every order in a file's bytes. Where they are no UTF-8, only a code is believed, since
 * that is plain ASCII with a checksum of its own; a document's names would have holes.
 */
export function readFileText(bytes: Uint8Array): OrderRead[] {
  const text = utf8(bytes);
  if (text !== null) return readText(text);
  const found = decodeAll(new TextDecoder().decode(bytes), MOST_ORDERS);
  return found.length === 0 ? [{ ok: false, problem: { code: 'not-utf8' } }] : found;
}

/** One document, or a list of them such as the bench's own export. */
export function readJson(json: unknown): OrderRead[] {
  if (!Array.isArray(json)) return [readDocument(json)];
  if (json.length === 0) return [{ ok: false, problem: { code: 'no-order' } }];
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
