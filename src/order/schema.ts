/** The JSON Schema of an order document, made of the table that `check.ts` reads too. */
import { VERSION } from './document.ts';
import { EMAIL_OR_NONE, INSTANT, LINE, NAME, NOTE, orderFields } from './fields.ts';

const NUMBER = /^[2-9CDFGHJKMNPRTVWXY]{3}(-[2-9CDFGHJKMNPRTVWXY]{3}){2}$/;

type Schema = Readonly<Record<string, unknown>>;

/**
 * What validators in other languages can read of the patterns that ask for Unicode
 * properties: bounds by code unit alone, written as ECMA-262, Python's `re` and RE2 all
 * read them. Each takes whatever its original takes, and a little more (format
 * characters, halves of surrogate pairs); `check.ts` asks the original.
 */
const PORTABLE: ReadonlyMap<RegExp, string> = new Map([
  [LINE, String.raw`^[^\x00-\x1F\x7F-\x9F]*$`],
  // Letters and digits of ASCII, or anything from the first letter beyond it on.
  [NAME, String.raw`^[^\x00-\x1F\x7F-\x9F]*[^\x00-\x2F\x3A-\x40\x5B-\x60\x7B-\xA9][^\x00-\x1F\x7F-\x9F]*$`],
  [NOTE, String.raw`^[^\x00-\x08\x0B-\x1F\x7F-\x9F]*$`],
  [
    EMAIL_OR_NONE,
    String.raw`^$|^[^\x00-\x20\x7F-\xA0@<>()\[\]\\,;:"]+@[^\x00-\x20\x7F-\xA0@<>()\[\]\\,;:".]+(\.[^\x00-\x20\x7F-\xA0@<>()\[\]\\,;:".]+)+$`,
  ],
]);

/** What the table doesn't say of a field, by its path: its description, or as much of a test as a pattern can say. */
const MORE: Readonly<Record<string, Schema>> = {
  number: {
    pattern: NUMBER.source,
    description: 'Order number; its last character checks the others (ISO/IEC 7064 MOD 37,36).',
  },
  placedAt: { pattern: INSTANT.source, description: 'ISO 8601, UTC, whole seconds.' },
  made: { description: 'Strung for the buyer, or the piece that lies finished, as it lies there.' },
  instead: { description: 'Parts chosen instead of those that the piece is listed with; empty for those.' },
  'instead.clasp.name': { description: 'As the buyer read it.' },
  'instead.pendant.name': { description: 'As the buyer read it.' },
  'measure.of': { description: 'Girth of a wrist, ankle or neck, or a finished length.' },
  'measure.text': { description: 'As the buyer wrote it; empty for a ready piece.' },
  hand: { description: 'The hand that works the clasp.' },
  pick: { description: 'Which piece where none meets the tolerance: the one below, above or nearest.' },
  choices: { description: 'Anything else a shop lets the buyer choose.' },
  delivery: { description: 'How the pieces reach the buyer; unsaid where she was not asked.' },
  'delivery.to.name': { description: 'Whose door it is; not always the buyer.' },
  'delivery.to.region': { description: 'County, state, province, prefecture; may be empty.' },
  'delivery.to.postcode': { description: 'Empty in a country that has none.' },
  'delivery.to.country': { description: 'ISO 3166-1, two letters.' },
  'shown.lengthMm': {
    description: 'Finished length of the piece shown, mm; of several strands the longest.',
  },
  'shown.strandsMm': {
    description: 'Finished length of every strand where there are several, mm; else empty.',
  },
  'shown.insideGirthMm': { description: 'Girth of the largest cylinder it passes round, mm.' },
  'shown.counts': { description: "Repeats of each section of each strand, in the design's own order." },
  'shown.priceMinor': { description: 'Price of one piece, minor units.' },
  'shown.postageMinor': { description: 'Postage within the total that was shown, minor units.' },
  'shown.currency': { description: 'ISO 4217 code.' },
};

/** Makes the schema of a field that stands at a path. */
type At = (path: string) => Schema;

const ofNumber =
  (type: 'number' | 'integer') =>
  (minimum: number, maximum: number): At =>
  () => ({ type, minimum, maximum });

const order = orderFields<At>({
  text: (least, maxLength, pattern) => () => ({
    type: 'string',
    ...(least > 0 && { minLength: least }),
    ...{ maxLength, pattern: PORTABLE.get(pattern) ?? pattern.source },
  }),
  number: ofNumber('number'),
  whole: ofNumber('integer'),
  // One value is an enumeration too: validators of older drafts know no `const`, and take what it would refuse.
  oneOf: (values) => () => ({ type: typeof values[0], enum: values }),
  list: (least, maxItems, each) => (path) => ({
    ...{ type: 'array', ...(least > 0 && { minItems: least }), maxItems, items: each(path) },
  }),
  map: (maxProperties, key, each) => (path) => ({
    ...{ type: 'object', maxProperties, propertyNames: key(path), additionalProperties: each(path) },
  }),
  fields: (fields) => (at) => {
    const properties = Object.entries(fields).map(([key, field]) => {
      const path = at === '' ? key : `${at}.${key}`;
      return [key, { ...field(path), ...MORE[path] }] as const;
    });
    return {
      type: 'object',
      properties: Object.fromEntries(properties),
      required: Object.keys(fields),
      additionalProperties: false,
    };
  },
  either: (_tag, cases) => (path) => ({ oneOf: Object.values(cases).map((one) => one(path)) }),
  test: () => () => ({ type: 'string' }),
});

/** The JSON Schema (2020-12) of the version written, as `public/schema/order-4.json` publishes it. */
export function orderJsonSchema(): Schema {
  return {
    $id: `claspwise-order-${VERSION}`,
    title: `Order, version ${VERSION}`,
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    ...order(''),
  };
}
