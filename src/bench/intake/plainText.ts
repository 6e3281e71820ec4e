/** A plain e-mail as lines that a person reads, whatever it went through on its way. */
import type { Email } from 'postal-mime';
import { parseMail } from './parseMail.ts';
import { withoutMarkup } from './withoutMarkup.ts';

/** What is no letter: soft hyphens, zero-width spaces, marks of direction. */
export const UNSEEN = /[\u00ad\u200b-\u200f\u202a-\u202e\u2060-\u2069\ufeff]/g;
/** Quote marks at a line's beginning. */
const QUOTED = /^(?:[ \t]*[>|])+[ \t]?/gm;
const SOFT_BREAK = /=[ \t]*\n/g;
const ESCAPED = /(?:=[\dA-F]{2})+/g;

/** Text without quote marks, escapes and what can't be seen; lines end in LF. */
export function plainLines(text: string): string {
  const lines = text.replace(/\r\n?/g, '\n').replace(QUOTED, '');
  return unescaped(lines)
    .replace(UNSEEN, '')
    .replace(/[\u00a0\u2007\u202f]/g, ' ')
    .normalize('NFC');
}

/** Quoted-printable (RFC 2045, 6.7) that was copied as it travelled; other text has no such soft breaks in it. */
function unescaped(text: string): string {
  const escapes = text.match(ESCAPED)?.length ?? 0;
  if (!SOFT_BREAK.test(text) && escapes < 2) return text;
  return text.replace(SOFT_BREAK, '').replace(ESCAPED, (run) => {
    const bytes = Uint8Array.from(run.slice(1).split('='), (hex) => parseInt(hex, 16));
    return new TextDecoder().decode(bytes);
  });
}

/** A message's sender, subject and text as one text; null for bytes that are no message with either. */
export async function messageText(bytes: Uint8Array): Promise<string | null> {
  const mail = await parseMail(bytes);
  if (mail === null) return null;
  const body = bodyText(mail);
  const sender = mail.replyTo?.[0] ?? mail.from;
  const head = [
    ...(sender?.address === undefined ? [] : [`From: ${sender.name} <${sender.address}>`]),
    ...(mail.subject === undefined ? [] : [`Subject: ${mail.subject}`]),
  ];
  return head.length === 0 ? null : `${head.join('\n')}\n\n${body.trim()}\n`;
}

/** A message's text; that of its HTML where the text part is missing or blank. */
function bodyText({ text = '', html = '' }: Email): string {
  return text.replace(UNSEEN, '').trim() === '' ? withoutMarkup(html) : text;
}

/** True for a message's source rather than its text. */
export function isSource(text: string): boolean {
  return /^[\w-]+:[^\n]*\n/.test(text) && /^(?:mime-version|content-type|received|message-id):/im.test(text);
}
