/** Numbers as people write them: whole, decimal with point or comma, common and mixed fractions. */

/** `over / under`, whole numbers, `under` above 0; `over` carries the sign. */
export type Fraction = { readonly over: number; readonly under: number };

/** More digits than any measure has; keeps whole-number arithmetic exact. */
const MOST_DIGITS = 7;

const DECIMAL = /^([+-]?)(\d*)[.,](\d+)$|^([+-]?)(\d+)[.,]?$/;
const FRACTION = /^([+-]?)(?:(\d+)[ -]+)?(\d+) ?\/ ?(\d+)$/;
/** Two numbers side by side or with a dash: a range, or two measures. */
const TWO = /^[\d.,/ ]*\d ?(?:-| ) ?\d[\d.,/ ]*$/;

const tooLong = (digits: string) => digits.length > MOST_DIGITS;

function readDecimal(text: string): Fraction | null {
  const found = DECIMAL.exec(text);
  if (!found) return null;
  const sign = (found[1] ?? found[4]) === '-' ? -1 : 1;
  const whole = found[2] ?? found[5] ?? '';
  const part = found[3] ?? '';
  if (tooLong(whole) || tooLong(part)) return null;
  return { over: sign * Number(whole + part), under: 10 ** part.length };
}

function readFraction(text: string): Fraction | null {
  const found = FRACTION.exec(text);
  if (!found) return null;
  const [, sign = '', whole = '0', over = '', under = ''] = found;
  if (tooLong(whole) || tooLong(over) || tooLong(under) || Number(under) === 0) return null;
  const value = Number(whole) * Number(under) + Number(over);
  return { over: sign === '-' ? -value : value, under: Number(under) };
}

/**
 * Read one number. Thousands separators aren't known: a comma is a decimal comma.
 * @returns the number, `'two'` where two were written, or null where none can be read.
 */
export function readNumber(text: string): Fraction | 'two' | null {
  return readDecimal(text) ?? readFraction(text) ?? (TWO.test(text) ? 'two' : null);
}
