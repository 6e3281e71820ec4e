/** Letters to the buyer, prepared as e-mail drafts: nothing is sent by itself. */
import { mailtoLink } from '#order/mailtoLink.ts';
import type { OrderDocument } from '#order/document.ts';
import type { Carrier } from '#catalogue/model/catalogue.ts';
import { LETTERS, type Letter, type LetterFacts, type ParcelFacts } from '#words/benchCodes.ts';
import type { EnteredParcel } from '../book/parcels.ts';
import { letterWords } from '#words/words.ts';
import { majorAmount } from '#words/format.ts';

export type Draft = {
  readonly letter: Letter;
  readonly subject: string;
  readonly body: string;
  /** Opens it in her mail program. */
  readonly link: string;
};

/** All drafts, in the language that the buyer read; the address is asked for only where there is none. */
export function draftsFor(document: OrderDocument, facts: LetterFacts): Draft[] {
  const words = letterWords(document.lang);
  return LETTERS.filter((one) => one !== 'address' || facts.delivery.by === 'unsaid').map((letter) => {
    const subject = words.subject(letter, facts);
    const body = words.body(letter, facts);
    return { letter, subject, body, link: mailtoLink(document.buyer.email, subject, body) };
  });
}

/**
 * The shop's payment address for an order.
 * @param template with `{number}`, `{amount}` (decimal, what is open) and `{currency}`; null for none
 * @returns null where there is none, or where it is no https address
 */
export function paymentLink(
  template: string | null,
  number: string,
  openMinor: number,
  currency: string,
): string | null {
  if (template === null) return null;
  const values: Readonly<Record<string, string>> = {
    number,
    amount: majorAmount(openMinor, currency),
    currency,
  };
  const link = template.replace(/\{(number|amount|currency)\}/g, (_, name: string) =>
    encodeURIComponent(values[name] ?? ''),
  );
  return URL.canParse(link) && new URL(link).protocol === 'https:' ? link : null;
}

/** A parcel with the page where it is followed, by the carrier of that name; its number is escaped, spaces left out. */
export function parcelFacts(
  { carrier, tracking }: Pick<EnteredParcel, 'carrier' | 'tracking'>,
  carriers: readonly Carrier[],
): ParcelFacts {
  const track = carriers.find(({ name }) => name === carrier)?.track ?? null;
  const link =
    track === null || tracking === ''
      ? null
      : track.replaceAll('{tracking}', encodeURIComponent(tracking.replace(/\s/g, '')));
  return { carrier, tracking, link };
}
