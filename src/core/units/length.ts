/**
 * Reading a length as people write it: "6 1/2", "6½ in", `6.5"`, "16,5 cm",
 * "165mm". Integer arithmetic to the last step, so that 6½ in and 16.51 cm
 * are the very same number of millimetres.
 */
import { readNumber } from './number.ts';
import type { Fraction } from './number.ts';
import type { LengthUnit } from './unit.ts';

export type LengthProblem =
  | { readonly code: 'empty' }
  | { readonly code: 'text-too-long'; readonly most: number }
  | { readonly code: 'not-a-number'; readonly text: string }
  | { readonly code: 'unknown-unit'; readonly unit: string }
  /** "6 to 7": one measure is wanted. */
  | { readonly code: 'two-measures'; readonly text: string }
  | { readonly code: 'not-positive'; readonly text: string }
  | { readonly code: 'too-large'; readonly mostMm: number };

export type ParsedLength =
  | { readonly ok: true; readonly mm: number; readonly unit: LengthUnit; readonly text: string }
  | { readonly ok: false; readonly problem: LengthProblem };

/** Longer than any measure anyone writes; keeps the reading cheap. */
export const MOST_LENGTH_TEXT = 40;

/** Ten metres: no strand, girth or height is longer, and a slipped key often is. */
export const MOST_LENGTH_MM = 10_000;

/** Tenths of a millimetre in each unit. The inch is exactly 25.4 mm (NIST SP 811 (2008), App. B). */
const TENTHS: Readonly<Record<LengthUnit, number>> = { in: 254, cm: 100, mm: 10 };

const UNIT_NAMES: Readonly<Record<string, LengthUnit>> = {
  in: 'in',
  ins: 'in',
  inch: 'in',
  inches: 'in',
  zoll: 'in',
  '"': 'in',
  "''": 'in',
  cm: 'cm',
  cms: 'cm',
  centimetre: 'cm',
  centimetres: 'cm',
  centimeter: 'cm',
  centimeters: 'cm',
  zentimeter: 'cm',
  zentimetern: 'cm',
  mm: 'mm',
  mms: 'mm',
  millimetre: 'mm',
  millimetres: 'mm',
  millimeter: 'mm',
  millimeters: 'mm',
  millimetern: 'mm',
};

/** What stands between two measures: "6 in 5", "16 to 17 cm". */
const MORE_FIGURES = /^(?:in|cm|mm|"|'|'')? ?(?:to|or|and|bis|oder|und)? ?\d/;

const refuse = (problem: LengthProblem): ParsedLength => ({ ok: false, problem });

/** One spelling for each mark: quotes (first, since NFKC takes a lone acute apart), dashes, spaces, fractions ("6½" is "6 1/2"). */
function plain(text: string): string {
  return text
    .replace(/[\u00bc-\u00be\u2150-\u215e\u2189]/g, (glyph) => ` ${glyph.normalize('NFKD')}`)
    .replace(/[\u201c\u201d\u201e\u2033\u3003]/g, '"')
    .replace(/[\u2018\u2019\u2032\u00b4`]/g, "'")
    .normalize('NFKC')
    .replace(/[\u2010-\u2015\u2212]/g, '-')
    .replace(/[\u2044\u2215]/g, '/')
    .replace(/\s+/g, ' ')
    .trim()
    .toLowerCase();
}

/** Millimetres of a fraction of a unit, correctly rounded: one division, of whole numbers. */
function toMm(value: Fraction, unit: LengthUnit): number {
  return (value.over * TENTHS[unit]) / (value.under * 10);
}

/**
 * Read one length.
 * @param text as typed; `fallback` is the unit of a bare number.
 * @returns millimetres above 0 with the unit written and the text as given, or the reason why not. Never throws.
 */
export function parseLength(text: string, fallback: LengthUnit): ParsedLength {
  if (typeof text !== 'string' || text.trim() === '') return refuse({ code: 'empty' });
  const shown = text.trim();
  if (shown.length > MOST_LENGTH_TEXT) return refuse({ code: 'text-too-long', most: MOST_LENGTH_TEXT });
  const [, figures = '', name = ''] = /^([^a-z"']*)(.*)$/.exec(readAnd(plain(shown))) ?? [];
  if (figures.trim() === '') return refuse({ code: 'not-a-number', text: shown });
  const unitName = name.replace(/\.$/, '').trim();
  if (MORE_FIGURES.test(unitName)) return refuse({ code: 'two-measures', text: shown });
  const unit =
    unitName === '' ? fallback : Object.hasOwn(UNIT_NAMES, unitName) ? UNIT_NAMES[unitName] : undefined;
  if (unit === undefined) return refuse({ code: 'unknown-unit', unit: unitName });
  const number = readNumber(figures.trim());
  if (number === 'two') return refuse({ code: 'two-measures', text: shown });
  if (number === null) return refuse({ code: 'not-a-number', text: shown });
  const mm = toMm(number, unit);
  if (mm <= 0) return refuse({ code: 'not-positive', text: shown });
  if (mm > MOST_LENGTH_MM) return refuse({ code: 'too-large', mostMm: MOST_LENGTH_MM });
  return { ok: true, mm, unit, text: shown };
}

/** "6 and 1/2", "6 und 1/2": the word says no more than the space. */
function readAnd(text: string): string {
  return text.replace(/^(\d+) (?:and|und) (\d+ ?\/ ?\d+)/, '$1 $2');
}
