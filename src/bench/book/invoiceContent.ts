/**
 * What an invoice or a credit note says, as it is kept: all its texts and sums,
 * so that it is the same for ever, whatever becomes of shop and order. Sums in minor units.
 */
import { z } from 'zod';
import { PAYMENT_KINDS, PAYMENT_WAYS } from '#words/benchCodes.ts';
import { LANGS } from '#words/lang.ts';
import { isDay } from '#words/day.ts';

const text = z.string().max(400);
const lines = z.array(text).max(12);
const day = z.string().refine(isDay);
const minor = z.int();

const content = z.strictObject({
  version: z.literal(1),
  /** The buyer's. */
  lang: z.enum(LANGS),
  seller: z.strictObject({ shop: text, name: text, address: lines, taxNumber: text.nullable() }),
  /** Name and lines of the address; both empty once the buyer is erased. */
  buyer: z.strictObject({ name: text, address: lines }),
  /** When the order came in, and when this was issued: days. */
  orderedOn: day,
  issuedOn: day,
  items: z
    .array(
      z.strictObject({
        text,
        quantity: z.int().nullable(),
        eachMinor: minor.nullable(),
        sumMinor: minor,
      }),
    )
    .max(8),
  /** ISO 4217. */
  currency: z.string().regex(/^[A-Z]{3}$/),
  totalMinor: minor,
  /** `hundredths`: of a percent within the prices, and what it comes to; null where the seller isn't registered. */
  tax: z.strictObject({ text, hundredths: z.int().nullable(), minor: minor.nullable() }),
  payments: z
    .array(z.strictObject({ kind: z.enum(PAYMENT_KINDS), way: z.enum(PAYMENT_WAYS), day, minor }))
    .max(1000),
  openMinor: minor,
  /** Why an invoice was taken back; '' on an invoice. */
  reason: z.string().max(4000),
});

export type InvoiceContent = z.output<typeof content>;

/** True for what an invoice may say; for texts that come from a file. */
export function isInvoiceContent(value: unknown): value is InvoiceContent {
  return content.safeParse(value).success;
}

/** The tax within a sum that includes it, to the nearest minor unit. @param hundredths of a percent */
export function taxWithin(sumMinor: number, hundredths: number): number {
  return Math.round((sumMinor * hundredths) / (10_000 + hundredths));
}
