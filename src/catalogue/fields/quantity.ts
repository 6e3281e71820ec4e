/**
 * A number with its unit, as a maker writes it: `8 mm`, `0.019 in`,
 * `6 1/2 in`, `250 %`, `0.62 g/m`. The unit is never guessed.
 */
import { gaugeMm } from '#core/units/gauge.ts';
import { parseLength } from '#core/units/length.ts';
import type { QuantityUnit } from '#words/catalogueCodes.ts';
import { refuse, type Parsed } from './parsed.ts';

/** Unit names of each dimension other than length, and what one of them is in the core's unit. */
const dimensions = {
  /** Grams. */
  mass: { g: 1, mg: 0.001, kg: 1000 },
  /** Metres. NIST SP 811: 1 ft = 0.3048 m, 1 yd = 0.9144 m, exact. */
  wireLength: { m: 1, ft: 0.3048, yd: 0.9144, cm: 0.01, mm: 0.001, in: 0.0254 },
  /** Grams a metre. */
  massPerM: { 'g/m': 1, 'g per m': 1 },
  /** Newtons. NIST SP 811: 1 lbf = 4.448 221 615 260 5 N, 1 kgf = 9.806 65 N. */
  force: { N: 1, lb: 4.4482216152605, lbf: 4.4482216152605, kg: 9.80665, kgf: 9.80665 },
  percent: { '%': 1, percent: 1, 'per cent': 1 },
  minutes: { min: 1, minute: 1, minutes: 1, h: 60, hour: 60, hours: 60, s: 1 / 60 },
  weeks: { week: 1, weeks: 1 },
  hoursPerWeek: { 'hours a week': 1, 'hour a week': 1, 'h a week': 1, 'hours per week': 1 },
  months: { month: 1, months: 1, year: 12, years: 12 },
} as const;

export type Dimension = 'length' | keyof typeof dimensions;

/** The core's unit of each dimension, which values and ranges are in. */
export const UNIT_OF: Readonly<Record<Dimension, QuantityUnit>> = {
  length: 'mm',
  mass: 'g',
  wireLength: 'm',
  massPerM: 'g/m',
  force: 'N',
  percent: '%',
  minutes: 'min',
  weeks: 'weeks',
  hoursPerWeek: 'hours a week',
  months: 'months',
};

const examples: Readonly<Record<Dimension, string>> = {
  length: '8 mm',
  mass: '1.2 g',
  wireLength: '30 ft',
  massPerM: '0.6 g/m',
  force: '98 N',
  percent: '250 %',
  minutes: '20 min',
  weeks: '3 weeks',
  hoursPerWeek: '12 hours a week',
  months: '24 months',
};

const form = /^(\d{1,7}(?:\.\d{1,6})?|\.\d{1,6})\s*(.*)$/;

const notAMeasure = (value: string, dimension: Dimension): Parsed<number> =>
  refuse({ code: 'not-a-measure', value, example: examples[dimension] });

/** The wire of rings and findings is sold by gauge: `20 AWG`, `18 swg`. */
function parseGauge(value: string): number | null {
  const [, gauge, system] = /^(\d{1,2}) ?(awg|swg)$/i.exec(value) ?? [];
  if (gauge === undefined) return null;
  return gaugeMm(system?.toLowerCase() === 'swg' ? 'swg' : 'awg', Number(gauge));
}

/** A length as buyers may write it too, except that its unit has to be there. */
function parseWrittenLength(value: string): Parsed<number> {
  const units = 'mm, cm, in';
  // A sharp edge is a rounding of nothing, which no buyer's measure ever is.
  if (/^0+(?:\.0+)?\s*(?:mm|cm|in)$/.test(value)) return { ok: true, value: 0 };
  if (/^[\d\s./½¼¾⅛⅜⅝⅞]+$/.test(value)) return refuse({ code: 'unit-missing', value, units });
  const gauge = parseGauge(value);
  if (gauge !== null) return { ok: true, value: gauge };
  const length = parseLength(value, 'mm');
  if (length.ok) return { ok: true, value: length.mm };
  const { problem } = length;
  if (problem.code === 'unknown-unit')
    return refuse({ code: 'unit-wrong', value, unit: problem.unit, units });
  return notAMeasure(value, 'length');
}

/** Reads a quantity in the core's unit; a problem carries what its sentence needs. */
export function parseQuantity(written: string | number | boolean, dimension: Dimension): Parsed<number> {
  const value = String(written).trim();
  if (dimension === 'length') return parseWrittenLength(value);
  const [, number, unit] = form.exec(value) ?? [];
  if (number === undefined || unit === undefined) return notAMeasure(value, dimension);
  const known: Readonly<Record<string, number>> = dimensions[dimension];
  const units = Object.keys(known).join(', ');
  if (unit === '') return refuse({ code: 'unit-missing', value, units });
  const factor = Object.hasOwn(known, unit) ? known[unit] : undefined;
  if (factor === undefined) return refuse({ code: 'unit-wrong', value, unit, units });
  return { ok: true, value: Number(number) * factor };
}
