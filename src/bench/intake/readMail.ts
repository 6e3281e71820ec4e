/** E-mail files: one message (RFC 5322) or a mailbox of many (RFC 4155). */
import type { Attachment } from 'postal-mime';
import { utf8 } from '../http/readBody.ts';
import { MOST_ORDERS, type OrderRead } from './orderRead.ts';
import { parseMail } from './parseMail.ts';
import { looksPlain } from './plainMail.ts';
import { messageText } from './plainText.ts';
import { readableBytes } from './readable.ts';
import { readFileText, readText } from './readText.ts';
import { withoutMarkup } from './withoutMarkup.ts';

/** Messages forwarded in one another: more than people do. */
const DEEPEST = 8;

/** Every order in one message: in its text, its HTML, an attached document or a message that it forwards. */
export async function readMessage(bytes: Uint8Array, depth = 0): Promise<OrderRead[]> {
  const mail = await parseMail(bytes);
  if (mail === null) return readFileText(bytes);
  const { text = '', html = '', attachments } = mail;
  // The same order stands in several parts; the first that holds one speaks for the mail.
  const parts: (() => OrderRead[] | Promise<OrderRead[]>)[] = [
    () => readText(text),
    () => readText(withoutMarkup(html)),
    // A code may stand behind a link alone.
    () => readText(html),
    ...attachments.map((one) => () => readAttachment(one, depth)),
    () => readFileText(bytes),
  ];
  let last: OrderRead[] = [];
  for (const part of parts) {
    const found = await part();
    if (found.some((one) => one.ok)) return found;
    if (last.length === 0 || isNone(last)) last = found;
  }
  return isNone(last) ? asPlain(await messageText(bytes), last) : last;
}

const NONE: OrderRead[] = [{ ok: false, problem: { code: 'no-order' } }];

/** What an attachment holds; nothing is looked for in pictures and the like. */
async function readAttachment(
  { mimeType, filename, content }: Attachment,
  depth: number,
): Promise<OrderRead[]> {
  const name = filename ?? '';
  const bytes = typeof content === 'string' ? new TextEncoder().encode(content) : new Uint8Array(content);
  if (mimeType === 'message/rfc822' || /\.eml$/i.test(name)) {
    return depth < DEEPEST ? readMessage(bytes, depth + 1) : NONE;
  }
  if (!/json|text/.test(mimeType) && !/\.(?:json|txt|html?)$/i.test(name)) return NONE;
  const readable = readableBytes(bytes);
  return asPlain(utf8(readable), readFileText(readable));
}

/** A text without an order's code that reads like the e-mail a piece's page offers without JavaScript. */
export function asPlain(text: string | null, found: OrderRead[]): OrderRead[] {
  return text !== null && looksPlain(text) ? [{ ok: false, problem: { code: 'plain', text } }] : found;
}

/** Every order in a mailbox, message by message. */
export async function readMailbox(bytes: Uint8Array): Promise<OrderRead[]> {
  const messages = splitMailbox(decodeLatin(bytes));
  if (messages.length > MOST_ORDERS) {
    return [{ ok: false, problem: { code: 'too-many-mails', most: MOST_ORDERS } }];
  }
  const found: OrderRead[] = [];
  for (const message of messages) {
    const inOne = await readMessage(Buffer.from(message, 'latin1'));
    // Other people's letters lie in a mailbox too; they are no refusals.
    if (!isNone(inOne)) found.push(...inOne);
  }
  return found.length === 0 ? [{ ok: false, problem: { code: 'no-order' } }] : found;
}

/** True for bytes that start as a mailbox does. */
export function isMailbox(bytes: Uint8Array): boolean {
  return decodeLatin(bytes.subarray(0, 5)) === 'From ';
}

function splitMailbox(text: string): string[] {
  return text
    .split(/^From .*\r?\n/m)
    .slice(1)
    .map((message) => message.replace(/^>(>*From )/gm, '$1'));
}

export function isNone(found: readonly OrderRead[]): boolean {
  return found.every((one) => !one.ok && one.problem.code === 'no-order');
}

/** A character a byte, so that splitting changes none. */
function decodeLatin(bytes: Uint8Array): string {
  return Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString('latin1');
}
