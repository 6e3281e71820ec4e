/**
 * An order as an e-mail that a person can read, with the compact form at its
 * foot for the bench. The sentences come from `words/`; this only lays them out.
 */
import type { OrderDocument } from './document.ts';
import { encode } from './text.ts';

export type MailTexts = {
  readonly subject: string;
  readonly greeting: string;
  /** What was ordered, a line each: `Size: 6½ in round the wrist`. */
  readonly lines: readonly string[];
  readonly closing: string;
  /** Says what the block at the foot is for, and to leave it as it is. */
  readonly foot: string;
};

/** Letters a line: below the 76 at which quoted-printable breaks (RFC 2045, 6.7), with room for quote marks. */
const FOLD = 64;

/**
 * The mail's text, lines ended by LF and none by a space: two hyphens and a space begin a
 * signature (RFC 3676, 4.3), which programs leave out of replies, with all that follows.
 */
export function mailBody(texts: MailTexts, order: OrderDocument): string {
  return [
    texts.greeting,
    '',
    ...texts.lines,
    '',
    texts.closing,
    '',
    texts.foot,
    '',
    foldCompact(encode(order)),
    '',
  ]
    .join('\n')
    .replace(/[ \t]+$/gm, '');
}

/**
 * The compact form in lines of 64, its tail whole on the last: readers know the end by it, and
 * a line that starts with its full stop would have that doubled by SMTP (RFC 5321, 4.5.2).
 */
export function foldCompact(compact: string): string {
  const tailAt = compact.lastIndexOf('.');
  const lines = compact.slice(0, tailAt).match(new RegExp(`.{1,${FOLD}}`, 'g')) ?? [];
  return lines.join('\n') + compact.slice(tailAt);
}

/** The longest prepared address, characters, that mail programs and Windows hand on whole (common practice, no source). */
export const MOST_MAILTO = 2_000;

/** The part of the shop's slip page that no server sees: `/slip/#claspwise1.….end`. */
export function slipLink(slipPage: string, order: OrderDocument): string {
  return `${slipPage}#${encode(order)}`;
}
