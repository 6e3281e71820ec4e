/** E-mail files: one message (RFC 5322) or a mailbox of many (RFC 4155). */
import type { Attachment } from 'postal-mime';
import { utf8 } from '../http/readBody.ts';
import { best, isNone, MOST_ORDERS, NONE, together, type OrderRead } from './orderRead.ts';
import { parseMail } from './parseMail.ts';
import { looksPlain } from './plainMail.ts';
import { messageText } from './plainText.ts';
import { readableBytes } from './readable.ts';
import { codesInBytes, readFileText, readText } from './readText.ts';
import { withoutMarkup } from './withoutMarkup.ts';

/** Messages forwarded in one another: more than people do. */
const DEEPEST = 8;
/** A line of a mail at the utmost, bytes (RFC 5322, 2.1.1). */
const LONGEST_LINE = 1_000;

/** Every order in one message: in its text, its HTML, attached documents and messages that it forwards. */
export async function readMessage(bytes: Uint8Array, depth = 0): Promise<readonly OrderRead[]> {
  const mail = await parseMail(bytes);
  if (mail === null) return readFileText(bytes);
  const { text = '', html = '', attachments } = mail;
  // One letter as text and as HTML; a code may stand behind a link alone.
  const letter = best([text, withoutMarkup(html), html].map(readText));
  const attached = await Promise.all(attachments.map((one) => readAttachment(one, depth)));
  const found = together([letter, ...attached]);
  if (!isNone(found)) return found;
  // A message that is none after all, or a broken one.
  const inSource = codesInBytes(bytes);
  return inSource.length > 0 ? inSource : asPlain(await messageText(bytes), NONE);
}

/** What an attachment holds; nothing is looked for in pictures and the like. */
async function readAttachment(
  { mimeType, filename, content }: Attachment,
  depth: number,
): Promise<readonly OrderRead[]> {
  const name = filename ?? '';
  const bytes = typeof content === 'string' ? new TextEncoder().encode(content) : new Uint8Array(content);
  if (mimeType === 'message/rfc822' || /\.eml$/i.test(name)) {
    return depth < DEEPEST ? readMessage(bytes, depth + 1) : NONE;
  }
  if (/json|text/.test(mimeType) || /\.(?:json|txt|html?)$/i.test(name)) {
    const readable = readableBytes(bytes);
    return asPlain(utf8(readable), readFileText(readable));
  }
  // Programs send what they don't know without a kind, or wrapped up in a kind of their own.
  return /^application\/(?:octet-stream|(?:vnd\.)?ms-)/.test(mimeType) ? codesInBytes(bytes) : NONE;
}

/** A text without an order's code that reads like the e-mail a piece's page offers without JavaScript. */
export function asPlain(text: string | null, found: readonly OrderRead[]): readonly OrderRead[] {
  return text !== null && looksPlain(text) ? [{ ok: false, problem: { code: 'plain', text } }] : found;
}

/** Every order in a mailbox, message by message. */
export async function readMailbox(bytes: Uint8Array): Promise<readonly OrderRead[]> {
  const messages = splitMailbox(decodeLatin(bytes));
  if (messages.length > MOST_ORDERS) {
    return [{ ok: false, problem: { code: 'too-many-mails', most: MOST_ORDERS } }];
  }
  const found: (readonly OrderRead[])[] = [];
  for (const message of messages) found.push(await readMessage(Buffer.from(message, 'latin1')));
  // Other people's letters lie in a mailbox too; they are no refusals.
  return together(found);
}

/** A line that parts messages: a sender, then day, time and year (RFC 4155, appendix A). Letters have lines that begin with From too. */
const FROM_LINE = /^From .*\d:\d\d.*\b\d{4}\b.*\r?\n/gm;

/** True for bytes that start as a mailbox does. */
export function isMailbox(bytes: Uint8Array): boolean {
  return decodeLatin(bytes.subarray(0, LONGEST_LINE)).search(FROM_LINE) === 0;
}

function splitMailbox(text: string): string[] {
  return text
    .split(FROM_LINE)
    .slice(1)
    .map((message) => message.replace(/^>(>*From )/gm, '$1'));
}

/** A character a byte, so that splitting changes none. */
function decodeLatin(bytes: Uint8Array): string {
  return Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString('latin1');
}
