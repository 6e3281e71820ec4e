/**
 * What each field of an order document may hold, said once. `check.ts` reads it
 * as a check, small enough for the buyer's browser, and `schema.ts` as the
 * published JSON Schema.
 */
import { HANDS, type InsteadPart, MEASURES, PICKS, SITS } from '#core/design/choice.ts';
import { LANGS } from '#words/lang.ts';
import {
  ADDRESS_CAPS,
  CAPS,
  FORMAT,
  MADE,
  VERSION,
  type Address,
  type Delivery,
  type OrderDocument,
} from './document.ts';
import { isNumber } from './number.ts';

/** One way to read the table: what each kind of field becomes. Lengths are in UTF-16 units. */
export type Reading<Field> = {
  readonly text: (least: number, most: number, pattern: RegExp) => Field;
  readonly number: (least: number, most: number) => Field;
  readonly whole: (least: number, most: number) => Field;
  readonly oneOf: (values: readonly (string | number)[]) => Field;
  readonly list: (least: number, most: number, each: Field) => Field;
  readonly map: (most: number, key: Field, each: Field) => Field;
  readonly fields: (fields: Readonly<Record<string, Field>>) => Field;
  /** Fields of one case or another, told apart by the value of the field `tag`. */
  readonly either: (tag: string, cases: Readonly<Record<string, Field>>) => Field;
  /** A text of which more is asked than a table can say. */
  readonly test: (test: (value: unknown) => boolean) => Field;
};

/** Instants of the years 2000 to 2999, whole seconds, UTC. */
export const INSTANT =
  /^2[0-9]{3}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])T([01][0-9]|2[0-3])(:[0-5][0-9]){2}Z$/;
/** One @, a dot after it, no spaces, brackets, quotes, controls: enough to write to, and nothing that can break a mail header. */
export const EMAIL = /^[^\s@<>()[\]\\,;:"\p{C}]+@[^\s@<>()[\]\\,;:"\p{C}.]+(\.[^\s@<>()[\]\\,;:"\p{C}.]+)+$/u;
/** An address, or none: what the maker entered for somebody she met may have a telephone number only. */
export const EMAIL_OR_NONE = new RegExp(`^$|${EMAIL.source}`, 'u');
const ID = /^[a-z0-9][a-z0-9-]*$/;
/** An id, or none. */
const ID_OR_NONE = /^(?:[a-z0-9][a-z0-9-]*)?$/;
/** A choice's name starts with a letter: objects keep such names in their order. */
const KEY = /^[a-z][a-z0-9-]*$/;
const CURRENCY = /^[A-Z]{3}$/;
/** The form of ISO 3166-1's two letters; which of them there are changes with the world. */
const COUNTRY = /^[A-Z]{2}$/;
/** One line of text: no control characters, no half of a surrogate pair. */
export const LINE = /^[^\p{Cc}\p{Cs}]*$/u;
/** A name has something to see in it. */
export const NAME = /^[^\p{Cc}\p{Cs}]*[\p{L}\p{N}][^\p{Cc}\p{Cs}]*$/u;
/** Of the control characters only line breaks and tabs have a place in a note. */
export const NOTE = /^(?:[^\p{Cc}\p{Cs}]|\n|\t)*$/u;

/** A day that exists: February has no 30th. */
export function isInstant(value: unknown): boolean {
  if (typeof value !== 'string' || !INSTANT.test(value)) return false;
  return new Date(Date.parse(value)).toISOString().slice(0, 19) + 'Z' === value;
}

/** The table, read one way. */
export function orderFields<Field>(reading: Reading<Field>): Field {
  const { text, number, whole, oneOf, list, map, fields, either, test } = reading;
  const line = (most: number): Field => text(0, most, LINE);
  const seen = (most: number): Field => text(1, most, NAME);
  const chosen = fields({ id: text(0, CAPS.id, ID_OR_NONE), name: line(CAPS.part) });
  return fields({
    format: oneOf([FORMAT]),
    version: oneOf([VERSION]),
    number: test(isNumber),
    placedAt: test(isInstant),
    lang: oneOf(LANGS),
    piece: fields({ id: text(1, CAPS.id, ID), revision: text(1, CAPS.id, ID) }),
    made: oneOf(MADE),
    instead: fields({ clasp: chosen, pendant: chosen } satisfies Record<InsteadPart, Field>),
    measure: fields({ of: oneOf(MEASURES), text: line(CAPS.text), mm: number(1, CAPS.mm) }),
    sit: oneOf(SITS),
    hand: oneOf(HANDS),
    pick: oneOf(PICKS),
    quantity: whole(1, CAPS.quantity),
    choices: map(CAPS.choices, text(1, CAPS.choiceKey, KEY), line(CAPS.choiceValue)),
    buyer: fields({
      name: seen(CAPS.name),
      email: text(0, CAPS.email, EMAIL_OR_NONE),
      note: text(0, CAPS.note, NOTE),
    }),
    delivery: either('by', {
      unsaid: fields({ by: oneOf(['unsaid']) }),
      collection: fields({ by: oneOf(['collection']) }),
      post: fields({
        by: oneOf(['post']),
        to: fields({
          name: seen(ADDRESS_CAPS.name),
          line1: seen(ADDRESS_CAPS.line1),
          line2: line(ADDRESS_CAPS.line2),
          town: line(ADDRESS_CAPS.town),
          region: line(ADDRESS_CAPS.region),
          postcode: line(ADDRESS_CAPS.postcode),
          country: text(2, 2, COUNTRY),
        } satisfies Record<keyof Address, Field>),
      }),
    } satisfies Record<Delivery['by'], Field>),
    shown: fields({
      lengthMm: number(0, CAPS.mm),
      strandsMm: list(0, CAPS.strands, number(0, CAPS.mm)),
      insideGirthMm: number(0, CAPS.mm),
      counts: list(1, CAPS.strands, list(1, CAPS.sections, whole(0, CAPS.repeats))),
      priceMinor: whole(0, CAPS.minor),
      postageMinor: whole(0, CAPS.minor),
      currency: text(3, 3, CURRENCY),
    }),
  } satisfies Record<keyof OrderDocument, Field>);
}
