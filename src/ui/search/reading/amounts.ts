/** Measures, money and bare numbers within a query: "17,5 cm", `7"`, "£30-£50", "40 Euro", "16 to 18 in". */
import { parseLength } from '#core/units/length.ts';
import type { LengthUnit } from '#core/units/unit.ts';

/** A figure or two, and what of; `most` equals `least` where there is one. */
export type Amount = {
  readonly of: 'length' | 'money' | 'number';
  /** Millimetres, whole units of currency, or the bare number. */
  readonly least: number;
  readonly most: number;
  /** Unit it was written in; null for money and numbers. */
  readonly unit: LengthUnit | null;
  /** Currency's sign or letters; null where none was written. */
  readonly sign: string | null;
  /** "40+": as much or more; "40ish": about as much. */
  readonly reach: 'open' | 'about' | null;
  /** Where it ends in the text. */
  readonly end: number;
};

const NUMBER = String.raw`\d{1,3}(?:[.,]\d{3})+(?:[.,]\d{1,2})?(?!\d)|\d{1,7}(?:[.,]\d{1,3})?(?:\s?[¼½¾⅛⅜⅝⅞]|[ -]\d{1,2}[/⁄]\d{1,2})?|\d{1,2}[/⁄]\d{1,2}|[¼½¾]`;
const UNIT = String.raw`inch(?:es)?|ins?|zoll|["”″]|''|’’|cms?|centimet(?:er|re)s?|zentimetern?|mms?|millimet(?:er|re)s?|millimetern`;
const SIGN = String.raw`[£€$]|gbp|eur|usd|chf`;
const AFTER = String.raw`${SIGN}|euros?|pounds?|quid|pfund|dollars?|bucks|francs?|franken`;
/** "40,-" */
const EVEN = String.raw`(?:[.,][-–—]{1,2}(?![\p{L}\p{N}]))?`;
const TO = String.raw`\s?(?:-|–|—|to|bis|and|und)\s*`;
/** Not within a word or a further number. */
const STOP = String.raw`(?![\p{L}\p{N}])`;

const sticky = (pattern: string): RegExp => new RegExp(pattern, 'iuy');

const MONEY = sticky(
  `(?<sign>${SIGN})?\\s?(?<least>${NUMBER})${EVEN}\\s?(?<first>${AFTER})?` +
    `(?:${TO}(?<other>${SIGN})?\\s?(?<most>${NUMBER})${EVEN}\\s?(?<after>${AFTER})?)?(?:(?<open>\\+)|-?(?<about>ish))?${STOP}`,
);
const LENGTH = sticky(
  `(?<least>${NUMBER})[\\s-]?(?:(?<first>${UNIT}))?(?:${TO}(?<most>${NUMBER})[\\s-]?(?<after>${UNIT}))?${STOP}`,
);

const SIGNS: Readonly<Record<string, string>> = {
  '£': 'GBP',
  gbp: 'GBP',
  pound: 'GBP',
  pounds: 'GBP',
  quid: 'GBP',
  pfund: 'GBP',
  '€': 'EUR',
  eur: 'EUR',
  euro: 'EUR',
  euros: 'EUR',
  chf: 'CHF',
  franc: 'CHF',
  francs: 'CHF',
  franken: 'CHF',
  $: 'USD',
  usd: 'USD',
  dollar: 'USD',
  dollars: 'USD',
  bucks: 'USD',
};

/** Units of length as the core reads them. */
const plainUnit = (unit: string): string =>
  unit.toLowerCase().replace('”', '"').replace('″', '"').replace('’’', "''");

const THOUSANDS = /^\d{1,3}(?:[.,]\d{3})+(?:[.,]\d{1,2})?$/;

/** @param bare true without a currency: then "7.125" may be inches, and only "1.000" is a thousand */
function figure(text: string, bare: boolean): number {
  const isThousands = THOUSANDS.test(text) && (!bare || text.endsWith('00'));
  const plain = isThousands ? text.replace(/[.,](?=\d{3})/g, '') : text;
  return Number(plain.replace(',', '.'));
}

/** Pieces aren't longer than this, mm; a slip of the key isn't a measure. */
const MOST_MM = 3000;

function lengthAt(text: string, at: number): Amount | null {
  LENGTH.lastIndex = at;
  const groups = LENGTH.exec(text)?.groups;
  const unit = groups?.['after'] ?? groups?.['first'];
  if (groups === undefined || unit === undefined) return null;
  const read = (number: string): ReturnType<typeof parseLength> =>
    parseLength(`${number.replace(/([\d])([¼½¾⅛⅜⅝⅞])/u, '$1 $2')} ${plainUnit(unit)}`, 'cm');
  const least = read(groups['least'] ?? '');
  const most = read(groups['most'] ?? groups['least'] ?? '');
  if (!least.ok || !most.ok || most.mm > MOST_MM) return null;
  return {
    of: 'length',
    least: Math.min(least.mm, most.mm),
    most: Math.max(least.mm, most.mm),
    unit: least.unit,
    sign: null,
    reach: null,
    end: LENGTH.lastIndex,
  };
}

const reachOf = ({ open, about }: Readonly<Record<string, string | undefined>>): Amount['reach'] =>
  open !== undefined ? 'open' : about !== undefined ? 'about' : null;

function moneyAt(text: string, at: number): Amount | null {
  MONEY.lastIndex = at;
  const groups = MONEY.exec(text)?.groups;
  if (groups === undefined) return null;
  const sign = groups['sign'] ?? groups['first'] ?? groups['other'] ?? groups['after'];
  const bare = sign === undefined;
  const least = figure(groups['least'] ?? '', bare);
  const most = groups['most'] === undefined ? least : figure(groups['most'], bare);
  if (Number.isNaN(least) || Number.isNaN(most)) return null;
  return {
    of: bare ? 'number' : 'money',
    least: Math.min(least, most),
    most: Math.max(least, most),
    unit: null,
    sign: bare ? null : (SIGNS[sign.toLowerCase()] ?? null),
    reach: reachOf(groups),
    end: MONEY.lastIndex,
  };
}

/** Fractions count as numbers too: "6 1/2". */
function fractionAt(text: string, at: number): Amount | null {
  LENGTH.lastIndex = at;
  const groups = LENGTH.exec(text)?.groups;
  const read = parseLength(groups?.['least'] ?? '', 'cm');
  if (groups === undefined || groups['most'] !== undefined || !read.ok) return null;
  const value = read.mm / 10;
  return {
    of: 'number',
    least: value,
    most: value,
    unit: null,
    sign: null,
    reach: null,
    end: LENGTH.lastIndex,
  };
}

/** The amount that begins at a place of the text; null where none does. */
export function amountAt(text: string, at: number): Amount | null {
  const amount = lengthAt(text, at) ?? moneyAt(text, at) ?? fractionAt(text, at);
  return amount !== null && amount.end > at ? amount : null;
}
