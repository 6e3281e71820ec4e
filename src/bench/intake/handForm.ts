/** The form of an order that is entered by hand: what its fields hold, as typed. */

export const HAND_FIELDS = [
  // The piece and its size.
  'piece',
  'made',
  'clasp',
  'pendant',
  'of',
  'size',
  'sit',
  'hand',
  'pick',
  'quantity',
  // The buyer.
  'name',
  'email',
  'phone',
  'note',
  'lang',
  'way',
  // Where it goes.
  'delivery',
  'to',
  'line1',
  'line2',
  'town',
  'region',
  'postcode',
  'country',
  // Kept from step to step: the e-mail it was read from, the order that is restrung, number, instant, what was shown.
  'mail',
  'restring',
  'number',
  'placedAt',
  'shown',
] as const;

export type HandField = (typeof HAND_FIELDS)[number];

/** Every field as it was typed; empty where nothing was. */
export type HandFields = Readonly<Record<HandField, string>>;

/** The longest e-mail that is kept beside the form, characters: many times what a page offers; escaped, a form may send it. */
export const MAIL_CAP = 10_000;
/** The longest that is read once: with the headers and parts of a message's source. */
export const SOURCE_CAP = 60_000;
/** Any other field; what is longer is told where the order is checked. */
const FIELD_CAP = 2_000;

export const EMPTY_HAND: HandFields = {
  ...(Object.fromEntries(HAND_FIELDS.map((name) => [name, ''])) as Record<HandField, string>),
  made: 'to-measure',
  sit: 'easy',
  hand: 'right',
  pick: 'best',
  quantity: '1',
  delivery: 'unsaid',
};

/** Reads the form; a field that it doesn't have stays as it is in an empty one. */
export function readHand(form: URLSearchParams): HandFields {
  const read = HAND_FIELDS.map((name) => {
    const cap = name === 'mail' ? MAIL_CAP : FIELD_CAP;
    return [name, (form.get(name) ?? EMPTY_HAND[name]).slice(0, cap)] as const;
  });
  return Object.fromEntries(read) as Record<HandField, string>;
}
