/**
 * Is this an order document? Written by hand so that the buyer's browser can
 * ask too: zod would be most of its bytes. `schema.ts` says the same in zod for
 * the maker's side, and the tests hold the two to one answer.
 */
import { HANDS, MEASURES, PICKS, SITS } from '#core/design/choice.ts';
import { LANGS } from '#words/lang.ts';
import { CAPS, FORMAT, VERSION } from './document.ts';
import type { OrderDocument } from './document.ts';
import { isNumber } from './number.ts';

type Test = (value: unknown) => boolean;
type Fields = Readonly<Record<string, Test>>;

/** Instants of the years 2000 to 2999, whole seconds, UTC. */
export const INSTANT = /^2\d{3}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])T([01]\d|2[0-3])(:[0-5]\d){2}Z$/;
/** One @, a dot after it, no spaces, brackets, quotes, controls: enough to write to, and nothing that can break a mail header. */
export const EMAIL = /^[^\s@<>()[\]\\,;:"\p{C}]+@[^\s@<>()[\]\\,;:"\p{C}.]+(\.[^\s@<>()[\]\\,;:"\p{C}.]+)+$/u;
export const ID = /^[a-z0-9][a-z0-9-]*$/;
/** A choice's name starts with a letter: objects keep such names in their order. */
export const KEY = /^[a-z][a-z0-9-]*$/;
export const CURRENCY = /^[A-Z]{3}$/;
/** One line of text: no control characters, no half of a surrogate pair. */
export const LINE = /^[^\p{Cc}\p{Cs}]*$/u;
/** A name has something to see in it. */
export const NAME = /^[^\p{Cc}\p{Cs}]*[\p{L}\p{N}][^\p{Cc}\p{Cs}]*$/u;
/** Of the control characters only line breaks and tabs have a place in a note. */
export const NOTE = /^(?:[^\p{Cc}\p{Cs}]|\n|\t)*$/u;

const text =
  (least: number, most: number, pattern: RegExp): Test =>
  (value) =>
    typeof value === 'string' && value.length >= least && value.length <= most && pattern.test(value);
const number =
  (least: number, most: number): Test =>
  (value) =>
    typeof value === 'number' && value >= least && value <= most;
const whole =
  (least: number, most: number): Test =>
  (value) =>
    Number.isInteger(value) && number(least, most)(value);
const oneOf =
  (values: readonly unknown[]): Test =>
  (value) =>
    values.includes(value);
const list =
  (most: number, test: Test): Test =>
  (value) =>
    Array.isArray(value) && value.length > 0 && value.length <= most && [...value].every(test);

/** A day that exists: February has no 30th. */
export const isInstant: Test = (value) => {
  if (!text(20, 20, INSTANT)(value)) return false;
  const ms = Date.parse(value as string);
  return new Date(ms).toISOString().slice(0, 19) + 'Z' === value;
};

const choices: Test = (value) =>
  isRecord(value) &&
  Object.keys(value).length <= CAPS.choices &&
  Object.entries(value).every(
    ([key, chosen]) => text(1, CAPS.choiceKey, KEY)(key) && text(0, CAPS.choiceValue, LINE)(chosen),
  );

const DOCUMENT: Readonly<Record<string, Test | Fields>> = {
  format: oneOf([FORMAT]),
  version: oneOf([VERSION]),
  number: isNumber,
  placedAt: isInstant,
  lang: oneOf(LANGS),
  piece: { id: text(1, CAPS.id, ID), revision: text(1, CAPS.id, ID) },
  measure: { of: oneOf(MEASURES), text: text(0, CAPS.text, LINE), mm: number(1, CAPS.mm) },
  sit: oneOf(SITS),
  hand: oneOf(HANDS),
  pick: oneOf(PICKS),
  quantity: whole(1, CAPS.quantity),
  choices,
  buyer: {
    name: text(1, CAPS.name, NAME),
    email: text(3, CAPS.email, EMAIL),
    note: text(0, CAPS.note, NOTE),
  },
  shown: {
    lengthMm: number(0, CAPS.mm),
    insideGirthMm: number(0, CAPS.mm),
    counts: list(CAPS.strands, list(CAPS.sections, whole(0, CAPS.repeats))),
    priceMinor: whole(0, CAPS.minor),
    currency: text(3, 3, CURRENCY),
  },
};

/**
 * Checks a value of unknown origin.
 * @returns null where it is an order document; else the path of the first field that is not, `''` for the whole
 */
export function checkOrder(value: unknown): string | null {
  return wrongField(value, DOCUMENT, '');
}

/** `checkOrder` as a type guard. */
export function isOrder(value: unknown): value is OrderDocument {
  return checkOrder(value) === null;
}

function wrongField(
  value: unknown,
  fields: Readonly<Record<string, Test | Fields>>,
  at: string,
): string | null {
  if (!isRecord(value)) return at;
  const path = (key: string): string => (at === '' ? key : `${at}.${key}`);
  for (const [key, test] of Object.entries(fields)) {
    const found = Object.hasOwn(value, key) ? value[key] : undefined;
    if (typeof test === 'function') {
      if (!test(found)) return path(key);
      continue;
    }
    const wrong = wrongField(found, test, path(key));
    if (wrong !== null) return wrong;
  }
  const unknown = Object.keys(value).find((key) => !Object.hasOwn(fields, key));
  return unknown === undefined ? null : path(unknown);
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
