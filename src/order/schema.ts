/**
 * The order document in zod, from which the published JSON Schema is made, and
 * against which the tests hold `check.ts`. Documents from outside are checked by
 * `check.ts` alone, at the desk as in the browser: it is total, where zod 4.6
 * throws at an object with a `length` of its own in a text's place.
 */
import { z } from 'zod';
import { LANGS } from '#words/lang.ts';
import { CURRENCY, EMAIL, ID, INSTANT, isInstant, KEY, LINE, NAME, NOTE } from './check.ts';
import { HANDS, MEASURES, PICKS, SITS } from '#core/design/choice.ts';
import { CAPS, FORMAT, VERSION } from './document.ts';
import { isNumber } from './number.ts';

const id = z.string().min(1).max(CAPS.id).regex(ID);
const mm = z.number().min(0).max(CAPS.mm);
const NUMBER = /^[2-9CDFGHJKMNPRTVWXY]{3}(-[2-9CDFGHJKMNPRTVWXY]{3}){2}$/;

const shown = z.strictObject({
  lengthMm: mm.meta({ description: 'Finished length of the piece shown, mm.' }),
  insideGirthMm: mm.meta({ description: 'Girth of the largest cylinder it passes round, mm.' }),
  counts: z
    .array(z.array(z.int().min(0).max(CAPS.repeats)).min(1).max(CAPS.sections))
    .min(1)
    .max(CAPS.strands)
    .meta({ description: "Repeats of each section of each strand, in the design's own order." }),
  priceMinor: z.int().min(0).max(CAPS.minor).meta({ description: 'Price of one piece, minor units.' }),
  currency: z.string().length(3).regex(CURRENCY).meta({ description: 'ISO 4217 code.' }),
});

const measure = z.strictObject({
  of: z.enum(MEASURES).meta({ description: 'Girth of a wrist, ankle or neck, or a finished length.' }),
  text: z.string().max(CAPS.text).regex(LINE).meta({ description: 'As the buyer wrote it.' }),
  mm: z.number().min(1).max(CAPS.mm),
});

const buyer = z.strictObject({
  name: z.string().min(1).max(CAPS.name).regex(NAME),
  email: z.string().min(3).max(CAPS.email).regex(EMAIL),
  note: z.string().max(CAPS.note).regex(NOTE),
});

const choices = z
  .record(z.string().min(1).max(CAPS.choiceKey).regex(KEY), z.string().max(CAPS.choiceValue).regex(LINE))
  .refine((value) => Object.keys(value).length <= CAPS.choices)
  .meta({ description: 'Anything else a shop lets the buyer choose.', maxProperties: CAPS.choices });

export const orderSchema = z.strictObject({
  format: z.literal(FORMAT),
  version: z.literal(VERSION),
  number: z
    .string()
    .regex(NUMBER)
    .refine(isNumber)
    .meta({ description: 'Order number; its last character checks the others (ISO/IEC 7064 MOD 37,36).' }),
  placedAt: z
    .string()
    .regex(INSTANT)
    .refine(isInstant)
    .meta({ description: 'ISO 8601, UTC, whole seconds.' }),
  lang: z.enum(LANGS),
  piece: z.strictObject({ id, revision: id }),
  measure,
  sit: z.enum(SITS),
  hand: z.enum(HANDS).meta({ description: 'The hand that works the clasp.' }),
  pick: z
    .enum(PICKS)
    .meta({ description: 'Which piece where none meets the tolerance: the one below, above or nearest.' }),
  quantity: z.int().min(1).max(CAPS.quantity),
  choices,
  buyer,
  shown,
});

/** The JSON Schema (2020-12) of version 1, as `public/schema/order-1.json` publishes it. */
export function orderJsonSchema(): Record<string, unknown> {
  return {
    $id: 'claspwise-order-1',
    title: 'Order, version 1',
    ...z.toJSONSchema(orderSchema, { target: 'draft-2020-12' }),
  };
}
