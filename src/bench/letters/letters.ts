/** Letters to the buyer, prepared as e-mail drafts: nothing is sent by itself. */
import { mailtoLink } from '#order/mail.ts';
import type { OrderDocument } from '#order/document.ts';
import { LETTERS, type Letter, type LetterFacts } from '#words/benchCodes.ts';
import { letterWords } from '#words/words.ts';
import { majorAmount } from '#words/format.ts';

export type Draft = {
  readonly letter: Letter;
  readonly subject: string;
  readonly body: string;
  /** Opens it in her mail program. */
  readonly link: string;
};

/** All drafts, in the language that the buyer read. */
export function draftsFor(document: OrderDocument, facts: LetterFacts): Draft[] {
  const words = letterWords(document.lang);
  return LETTERS.map((letter) => {
    const subject = words.subject(letter, facts);
    const body = words.body(letter, facts);
    return { letter, subject, body, link: mailtoLink(document.buyer.email, subject, body) };
  });
}

/**
 * The shop's payment address for an order.
 * @param template with `{number}`, `{amount}` (decimal, of all pieces) and `{currency}`; null for none
 * @returns null where there is none, or where it is no https address
 */
export function paymentLink(
  template: string | null,
  number: string,
  totalMinor: number,
  currency: string,
): string | null {
  if (template === null) return null;
  const values: Readonly<Record<string, string>> = {
    number,
    amount: majorAmount(totalMinor, currency),
    currency,
  };
  const link = template.replace(/\{(number|amount|currency)\}/g, (_, name: string) =>
    encodeURIComponent(values[name] ?? ''),
  );
  return URL.canParse(link) && new URL(link).protocol === 'https:' ? link : null;
}
