/** An amount as she types it, in the units that a thing is sold in, turned into pieces or millimetres. */
import { readNumber } from '#core/units/number.ts';
import { INCH_MM } from '#core/units/unit.ts';
import { STOCK_UNITS, type AmountProblem, type StockUnit } from '#words/stockCodes.ts';
import { STOCK_CAPS } from '../book/movements.ts';
import type { Thing } from './things.ts';

export type ReadAmount =
  | {
      readonly ok: true;
      /** Whole pieces, or whole mm of wire. */
      readonly amount: number;
      /** As it was entered, `3 strand`; kept beside the line. */
      readonly entered: string;
    }
  | { readonly ok: false; readonly problem: AmountProblem };

/** Millimetres. NIST SP 811: 1 ft = 0.3048 m, exact. */
const LENGTHS: Readonly<Partial<Record<StockUnit, number>>> = { m: 1000, cm: 10, ft: 304.8, in: INCH_MM };

/** What a thing may be entered in, the usual first. */
export function unitsOf({ wire, sold }: Pick<Thing, 'wire' | 'sold'>): StockUnit[] {
  const bought: StockUnit[] = sold === null || sold.by === 'piece' ? [] : [sold.by];
  return wire ? ['m', 'cm', 'ft', 'in', ...bought] : ['piece', ...bought, 'g'];
}

/** Pieces or mm in one of a unit. */
function holds(unit: StockUnit, { sold, massG }: Pick<Thing, 'sold' | 'massG'>): number {
  if (unit === 'piece') return 1;
  if (unit === 'g') return 1 / massG;
  return LENGTHS[unit] ?? sold?.holds ?? 1;
}

/**
 * Reads an amount.
 * @param unit as a form or a table names it; '' for the thing's usual one
 * @param least what is still an amount: 0 for a count, else 1
 */
export function readAmount(
  text: string,
  unit: string,
  thing: Pick<Thing, 'wire' | 'sold' | 'massG'>,
  least: 0 | 1,
): ReadAmount {
  const typed = text.trim();
  const refuse = (problem: AmountProblem): ReadAmount => ({ ok: false, problem });
  const units = unitsOf(thing);
  const wanted = unit === '' ? units[0] : STOCK_UNITS.find((one) => one === unit);
  if (wanted === undefined || !units.includes(wanted)) {
    return refuse({ code: 'unit-unknown', text: unit, units });
  }
  if (typed === '') return refuse({ code: 'amount-missing' });
  const number = readNumber(typed.replace(/ ?½$/, ' 1/2').trim());
  if (number === null || number === 'two') return refuse({ code: 'amount-unreadable', text: typed });
  const value = number.over / number.under;
  const amount = Math.round(value * holds(wanted, thing));
  if (wanted === 'piece' && !Number.isInteger(value))
    return refuse({ code: 'amount-not-whole', text: typed });
  if (value < 0 || amount < least) return refuse({ code: 'amount-nothing' });
  if (amount > (thing.wire ? STOCK_CAPS.mm : STOCK_CAPS.pieces)) return refuse({ code: 'amount-too-much' });
  return { ok: true, amount, entered: wanted === 'piece' ? typed : `${typed} ${wanted}` };
}
