/**
 * Lengths, money, dates and lists as people write them. Everything but the
 * eighths of an inch goes through Intl.
 */
import { INCH_MM, type LengthUnit } from '#core/units/unit.ts';
import { locale, type Lang } from './lang.ts';

/** Makers and their rulers read inches in eighths. */
const EIGHTHS = ['', '⅛', '¼', '⅜', '½', '⅝', '¾', '⅞'] as const;
const UNIT_NAMES: Readonly<Record<Lang, Readonly<Record<LengthUnit, string>>>> = {
  en: { in: 'in', cm: 'cm', mm: 'mm' },
  de: { in: 'Zoll', cm: 'cm', mm: 'mm' },
};
/** Between a number and its unit, so that they never part at a line's end. */
const NO_BREAK = '\u00a0';
const MINUS = '\u2212';

/** Making a format takes many times what using it does, so each is made once. */
function madeOnce<Made>(make: (lang: Lang, of: string) => Made): (lang: Lang, of: string) => Made {
  const made = new Map<string, Made>();
  return (lang, of) => {
    const key = `${lang} ${of}`;
    const known = made.get(key);
    if (known !== undefined) return known;
    const fresh = make(lang, of);
    made.set(key, fresh);
    return fresh;
  };
}

const numbers = madeOnce(
  (lang, digits) => new Intl.NumberFormat(locale(lang), { maximumFractionDigits: Number(digits) }),
);
const moneys = madeOnce((lang, currency) => {
  const format = new Intl.NumberFormat(locale(lang), { style: 'currency', currency });
  return { format, digits: format.resolvedOptions().maximumFractionDigits ?? 2 };
});

/** Decimals of a currency (ISO 4217). */
export const currencyDigits = (currency: string): number => moneys('en', currency).digits;

/** Money as programs write it: a decimal point, as many decimals as the currency has, no sign. */
export function majorAmount(minor: number, currency: string): string {
  const digits = currencyDigits(currency);
  return (minor / 10 ** digits).toFixed(digits);
}

const lists = madeOnce(
  (lang, type) => new Intl.ListFormat(locale(lang), { type: type as Intl.ListFormatType }),
);

/** A number with at most `digits` decimals, in the language's spelling. */
export function formatNumber(value: number, lang: Lang, digits = 0): string {
  return numbers(lang, String(digits)).format(value);
}

/** A length without its unit: eighths of an inch ("6½"), tenths of a centimetre, whole millimetres. */
export function formatLengthNumber(mm: number, unit: LengthUnit, lang: Lang): string {
  if (unit === 'cm') return formatNumber(Math.round(mm) / 10, lang, 1);
  if (unit === 'mm') return formatNumber(Math.round(mm), lang);
  const eighths = Math.round((Math.abs(mm) / INCH_MM) * 8);
  const whole = Math.floor(eighths / 8);
  const part = EIGHTHS[eighths % 8] ?? '';
  const sign = mm < 0 && eighths > 0 ? MINUS : '';
  return sign + (whole > 0 || part === '' ? formatNumber(whole, lang) : '') + part;
}

/** Where a length stops at the next mark of a ruler, not at the nearest. Micrometres are rounding noise. */
const NOISE_MM = 0.001;
const SIXTEENTHS = 16;
const SUPER = '⁰¹²³⁴⁵⁶⁷⁸⁹';
const SUB = '₀₁₂₃₄₅₆₇₈₉';
const inDigits = (value: number, digits: string): string =>
  [...String(value)].map((digit) => digits[Number(digit)] ?? '').join('');

/** Sixteenths of an inch as a ruler is read: eighths by their own signs, else ³⁄₁₆. */
function sixteenths(count: number, lang: Lang): string {
  const whole = Math.floor(count / SIXTEENTHS);
  const rest = count % SIXTEENTHS;
  const part =
    rest % 2 === 0 ? (EIGHTHS[rest / 2] ?? '') : `${inDigits(rest, SUPER)}⁄${inDigits(SIXTEENTHS, SUB)}`;
  return (whole > 0 || part === '' ? formatNumber(whole, lang) : '') + part;
}

/** "7³⁄₁₆ in" and "182.5 mm", or the other way round; below a sixteenth of an inch millimetres alone. */
function rulerParts(
  mm: number,
  unit: LengthUnit,
  lang: Lang,
  round: 'near' | 'up' = 'near',
): { lead: string; other: string } {
  const steps = (stepMm: number): number =>
    round === 'up' ? Math.ceil((mm - NOISE_MM) / stepMm) : Math.round(mm / stepMm);
  const metric = `${formatNumber(steps(0.5) / 2, lang, 1)}${NO_BREAK}${UNIT_NAMES[lang].mm}`;
  const count = steps(INCH_MM / SIXTEENTHS);
  if (count === 0) return { lead: metric, other: '' };
  const inches = `${sixteenths(count, lang)}${NO_BREAK}${UNIT_NAMES[lang].in}`;
  return unit === 'in' ? { lead: inches, other: metric } : { lead: metric, other: inches };
}

/** A length as a maker would say it: "6½ in", "16.5 cm", "165 mm" (German: "6½ Zoll", "16,5 cm"). */
export function formatLength(mm: number, unit: LengthUnit, lang: Lang): string {
  return formatLengthNumber(mm, unit, lang) + NO_BREAK + UNIT_NAMES[lang][unit];
}

/** Money from integer minor units of an ISO 4217 currency; as many decimals as that currency has. */
export function formatMoney(minor: number, currency: string, lang: Lang): string {
  const { format, digits } = moneys(lang, currency);
  return format.format(minor / 10 ** digits);
}

/**
 * A day, written out: "25 November 2026". `iso` is an ISO 8601 date, or an instant: then the day that it falls on
 * where this runs, at the maker's bench or in the reader's browser.
 */
export function formatDate(iso: string, lang: Lang): string {
  const zone = iso.includes('T') ? {} : { timeZone: 'UTC' };
  return new Intl.DateTimeFormat(locale(lang), { dateStyle: 'long', ...zone }).format(new Date(iso));
}

/** A day as exactly as it is known, from "2024", "2024-05" or "2024-05-17": "2024", "May 2024", "17 May 2024". */
export function formatKnownDate(known: string, lang: Lang): string {
  const [, month, day] = known.split('-');
  const format = new Intl.DateTimeFormat(locale(lang), {
    timeZone: 'UTC',
    year: 'numeric',
    ...(month !== undefined && { month: 'long' }),
    ...(day !== undefined && { day: 'numeric' }),
  });
  return format.format(new Date(known));
}

/** A month, written out: "November 2026". @param month `2026-11` */
export function formatMonth(month: string, lang: Lang): string {
  const style = { month: 'long', year: 'numeric', timeZone: 'UTC' } as const;
  return new Intl.DateTimeFormat(locale(lang), style).format(new Date(`${month}-01`));
}

/** The day and time of day of an instant where this runs, to the minute. */
export function formatDateTime(iso: string, lang: Lang): string {
  const style = { dateStyle: 'long', timeStyle: 'short' } as const;
  return new Intl.DateTimeFormat(locale(lang), style).format(new Date(iso));
}

const regions = madeOnce((lang, type) => new Intl.DisplayNames(locale(lang), { type: type as 'region' }));

/** A country's name; the code itself where no country has it. `code` is ISO 3166-1, two letters. */
export const countryName = (code: string, lang: Lang): string =>
  /^[A-Z]{2}$/.test(code) ? (regions(lang, 'region').of(code) ?? code) : code;

const currencies = madeOnce(
  (lang, type) => new Intl.DisplayNames(locale(lang), { type: type as 'currency' }),
);

/** A currency's name: "British Pound". @param code ISO 4217 */
export const currencyName = (code: string, lang: Lang): string =>
  currencies(lang, 'currency').of(code) ?? code;

/** Countries with their names, in the order of the names. */
export const countriesByName = (
  codes: readonly string[],
  lang: Lang,
): readonly (readonly [code: string, name: string])[] =>
  codes
    .map((code) => [code, countryName(code, lang)] as const)
    .toSorted(([, one], [, other]) => one.localeCompare(other, lang));

/** "a, b and c". */
export function formatList(
  items: readonly string[],
  lang: Lang,
  type: 'conjunction' | 'disjunction' = 'conjunction',
): string {
  return lists(lang, type).format(items);
}

/** What sentences need to write figures, bound to one reader's language, unit and the shop's currency. */
export type Format = {
  readonly lang: Lang;
  /** A measure of a body or a piece: the reader's unit. */
  readonly length: (mm: number) => string;
  /** A short length such as an ease: eighths of an inch, or whole millimetres, as also where it is less than an eighth. */
  readonly short: (mm: number) => string;
  /** A length to cut, set or measure at the bench: as the ruler of the reader's unit shows it (sixteenths of an inch, half millimetres), the other in brackets; `up`: not less than it is. */
  readonly ruler: (mm: number, round?: 'near' | 'up') => string;
  /** The same in its two parts, the other unit's empty where there is but one. */
  readonly rulerParts: (mm: number) => { readonly lead: string; readonly other: string };
  /** How far two lengths are apart that are read beside it: as `short`, but in tenths of a millimetre where the rounded lengths would belie that. */
  readonly apart: (fromMm: number, toMm: number) => string;
  /** A difference finer than anyone measures: tenths of a millimetre. */
  readonly fine: (mm: number) => string;
  readonly money: (minor: number) => string;
  readonly number: (value: number, digits?: number) => string;
  readonly list: (items: readonly string[]) => string;
  /** A country's name by its two letters. */
  readonly country: (code: string) => string;
};

/** Whether a length reads as none at all in the reader's unit: less than half its finest step. */
export const readsAsNone = (f: Format, mm: number): boolean => f.length(Math.abs(mm)) === f.length(0);

/** Below this a length in eighths of an inch would read as none at all. */
const HALF_EIGHTH_MM = INCH_MM / 16;

/** True where the lengths, each rounded to the unit's own step, lie as far apart as their rounded difference says. */
function readAsApart(fromMm: number, toMm: number, unit: LengthUnit): boolean {
  const stepMm = unit === 'in' ? INCH_MM / 8 : 1;
  const [from, to, apart] = [fromMm, toMm, toMm - fromMm].map((mm) => Math.round(mm / stepMm)) as [
    number,
    number,
    number,
  ];
  return apart !== 0 && to - from === apart;
}

/** Binds the formats above. `currency` is an ISO 4217 code. */
export function formatFor(lang: Lang, unit: LengthUnit, currency: string): Format {
  const short = (mm: number): string =>
    formatLength(mm, unit === 'in' && Math.abs(mm) >= HALF_EIGHTH_MM ? 'in' : 'mm', lang);
  const fine = (mm: number): string => `${formatNumber(mm, lang, 1)}${NO_BREAK}mm`;
  return {
    lang,
    length: (mm) => formatLength(mm, unit, lang),
    short,
    fine,
    apart: (fromMm, toMm) => (readAsApart(fromMm, toMm, unit) ? short : fine)(Math.abs(toMm - fromMm)),
    ruler: (mm, round) => {
      const { lead, other } = rulerParts(mm, unit, lang, round);
      return other === '' ? lead : `${lead} (${other})`;
    },
    rulerParts: (mm) => rulerParts(mm, unit, lang),
    money: (minor) => formatMoney(minor, currency, lang),
    number: (value, digits) => formatNumber(value, lang, digits),
    list: (items) => formatList(items, lang),
    country: (code) => countryName(code, lang),
  };
}
