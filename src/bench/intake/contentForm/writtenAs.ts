/**
 * From what she types into a field to what its file has to say: units and the
 * currency are added where the field's label already gave them, marks of
 * another language are read, and what can't be made out stays as typed, so
 * that the catalogue's own check tells of it.
 */
import type { Plain } from '#catalogue/write/plain.ts';
import type { FieldKind } from '#catalogue/fields/kind.ts';
import { parseMoney, parseRate, withCurrency } from '#catalogue/fields/money.ts';
import { parseQuantity } from '#catalogue/fields/quantity.ts';
import { COUNTRIES } from '#core/post/countries.ts';
import { EVERYWHERE_ELSE } from '#catalogue/fields/field.ts';
import { countryName } from '#words/format.ts';
import { LANGS } from '#words/lang.ts';

type Kind<Name extends FieldKind['kind']> = Extract<FieldKind, { readonly kind: Name }>;

/** `6,5` is six and a half, `1,000` may be a thousand and is left as it is. */
const withPoint = (text: string): string =>
  /^[1-9]\d{0,2},\d{3}(?!\d)/.test(text) ? text : text.replace(/(\d),(\d)/, '$1.$2');

/** A blank between figures and unit, as the files have it. */
const spaced = (text: string): string =>
  text.replace(/^([\d./½¼¾⅛⅜⅝⅞ ]*[\d½¼¾⅛⅜⅝⅞])\s*([a-z%].*)$/i, '$1 $2');

/** The unit that stands in a value, as written there. */
const unitIn = (written: string): string | null => /[a-z%].*$/i.exec(written)?.[0] ?? null;

function quantityAs({ dimension, unit }: Kind<'quantity'>, typed: string, before: string): string {
  const text = spaced(withPoint(typed));
  const parsed = parseQuantity(text, dimension);
  if (parsed.ok || parsed.error.code !== 'unit-missing') return text;
  return `${text} ${unitIn(before) ?? unit}`;
}

function moneyAs(typed: string, before: string, currency: string): string {
  const parsed = parseMoney(typed);
  if (parsed.ok) return typed;
  if (parsed.error.code === 'money-marks') return moneyAs(parsed.error.meant, before, currency);
  if (parsed.error.code !== 'price-without-currency') return typed;
  return withCurrency(typed, currency, /[A-Z]{3}$/.test(before) ? 'code' : 'sign');
}

function rateAs({ per }: Kind<'rate'>, typed: string, before: string, currency: string): string {
  if (parseRate(typed, per).ok) return typed;
  const [amount = '', unit] = typed.split(/\s+per\s+|\s*\/\s*/);
  const [amountBefore = ''] = before.split(/\s+per\s+|\s*\/\s*/);
  if (unit !== undefined && unit !== per) return typed;
  return `${moneyAs(amount, amountBefore, currency)} per ${per}`;
}

/** `17.5.2024` and `5.2024` as dates are written in the files. */
function dateAs(typed: string): Plain {
  const [, day, month, year] = /^(?:(\d{1,2})\. ?)?(\d{1,2})\. ?(\d{4})$/.exec(typed) ?? [];
  if (month !== undefined) {
    return [year, month.padStart(2, '0'), ...(day === undefined ? [] : [day.padStart(2, '0')])].join('-');
  }
  // A year alone is a number in YAML, and needs no quotes then.
  return /^\d{4}$/.test(typed) ? Number(typed) : typed;
}

const known: ReadonlyMap<string, string> = new Map(
  LANGS.flatMap((lang) => COUNTRIES.map((code) => [countryName(code, lang).toLowerCase(), code] as const)),
);

/** A country's two letters, from them or from its name in a language of the shop. */
function countryAs(typed: string): string {
  if (typed.toLowerCase() === EVERYWHERE_ELSE) return EVERYWHERE_ELSE;
  return known.get(typed.toLowerCase()) ?? (/^[a-z]{2}$/i.test(typed) ? typed.toUpperCase() : typed);
}

/**
 * What a field's file says where she typed `typed`.
 * @param typed without blanks round it; not empty
 * @param before what the file says now, empty for nothing: its unit and the way of its currency go on
 * @param currency of the shop, ISO 4217
 */
export function writtenAs(shape: FieldKind, typed: string, before: string, currency: string): Plain {
  switch (shape.kind) {
    case 'quantity':
      return quantityAs(shape, typed, before);
    case 'money':
      return moneyAs(typed, before, currency);
    case 'rate':
      return rateAs(shape, typed, before, currency);
    case 'whole':
      return /^\d{1,9}$/.test(typed) ? Number(typed) : typed;
    case 'date':
      return dateAs(typed);
    case 'country':
      return countryAs(typed);
    case 'colour':
      return typed.toLowerCase();
    case 'taxRate':
      return /^\d+([.,]\d+)?$/.test(typed) ? `${withPoint(typed)} %` : typed;
    default:
      return typed;
  }
}

/** A value of a file as text, as its field shows it; empty for what is no value. */
export function shownAs(shape: FieldKind, written: unknown): string {
  if (typeof written !== 'string' && typeof written !== 'number' && typeof written !== 'boolean') return '';
  const text = String(written).trim().replaceAll('\r\n', '\n');
  if (shape.kind === 'colour') return text.toLowerCase();
  if (shape.kind !== 'yesNo') return text;
  const said = text.toLowerCase();
  return said === 'true' ? 'yes' : said === 'false' ? 'no' : said;
}

/** The unit that a field is labelled with: that of its value, else the usual one; null where there is none. */
export function unitOf(shape: FieldKind, shown: string, currency: string): string | null {
  if (shape.kind === 'quantity') return unitIn(shown) ?? shape.unit;
  if (shape.kind === 'money') return currency;
  return shape.kind === 'rate' ? `${currency} per ${shape.per}` : null;
}
