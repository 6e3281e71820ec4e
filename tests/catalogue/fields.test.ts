import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import { CURRENCIES, parseMoney, parseRate } from '#catalogue/fields/money.ts';
import { parseQuantity, type Dimension } from '#catalogue/fields/quantity.ts';
import { beadLine, date, isId } from '#catalogue/fields/field.ts';
import { currencyDigits } from '#words/format.ts';

const value = (written: string | number, dimension: Dimension): number => {
  const parsed = parseQuantity(written, dimension);
  if (!parsed.ok) throw new Error(parsed.error.code);
  return parsed.value;
};

describe('quantities as a maker writes them', () => {
  it.each([
    ['8 mm', 8],
    ['8mm', 8],
    ['0.8 cm', 8],
    // NIST SP 811 (2008), appendix B.8: 1 inch is 25.4 mm, exactly.
    ['0.019 in', 0.4826],
    ['1/2 in', 12.7],
    ['6 1/2 in', 165.1],
    ['0 mm', 0],
  ])('length %s', (written, mm) => {
    expect(value(written, 'length')).toBe(mm);
  });

  it('forces', () => {
    // NIST SP 811 (2008), appendix B.8: pound-force 4.448 222 N, kilogram-force 9.806 65 N.
    expect(value('1 lb', 'force')).toBeCloseTo(4.448222, 6);
    expect(value('1 kg', 'force')).toBeCloseTo(9.80665, 6);
    expect(value('20 N', 'force')).toBe(20);
  });

  it('other dimensions', () => {
    expect(value('250 %', 'percent')).toBe(250);
    expect(value('1.5 h', 'minutes')).toBe(90);
    expect(value('2 years', 'months')).toBe(24);
    expect(value('0.68 g/m', 'massPerM')).toBe(0.68);
    expect(value('14 hours a week', 'hoursPerWeek')).toBe(14);
    expect(parseQuantity('14 hours', 'hoursPerWeek')).toMatchObject({
      ok: false,
      error: { code: 'unit-wrong' },
    });
    expect(value('650 mg', 'mass')).toBeCloseTo(0.65, 12);
  });

  it('never guesses a unit, never takes another dimension’s', () => {
    for (const dimension of ['length', 'mass', 'force', 'percent', 'minutes'] as const) {
      expect(parseQuantity('12', dimension)).toMatchObject({ ok: false, error: { code: 'unit-missing' } });
      expect(parseQuantity(12, dimension)).toMatchObject({ ok: false, error: { code: 'unit-missing' } });
    }
    expect(parseQuantity('12 g', 'length')).toMatchObject({ ok: false, error: { code: 'unit-wrong' } });
    expect(parseQuantity('12 constructor', 'mass')).toMatchObject({
      ok: false,
      error: { code: 'unit-wrong' },
    });
    expect(parseQuantity('12 mm', 'mass')).toMatchObject({ ok: false, error: { code: 'unit-wrong' } });
  });

  it('takes any text without throwing, and gives finite figures only', () => {
    const dimension = fc.constantFrom<Dimension>('length', 'mass', 'massPerM', 'force', 'percent', 'minutes');
    fc.assert(
      fc.property(fc.string(), dimension, (written, of) => {
        const parsed = parseQuantity(written, of);
        return !parsed.ok || Number.isFinite(parsed.value);
      }),
    );
  });
});

describe('money', () => {
  it('counts digits', () => {
    expect(parseMoney('£48.00')).toMatchObject({ ok: true, value: { minor: 4800, currency: 'GBP' } });
    expect(parseMoney('48.5 EUR')).toMatchObject({ ok: true, value: { minor: 4850, currency: 'EUR' } });
    expect(parseMoney('$0.07')).toMatchObject({ ok: true, value: { minor: 7, currency: 'USD' } });
    expect(parseMoney('1200 JPY')).toMatchObject({ ok: true, value: { minor: 1200, currency: 'JPY' } });
    expect(parseMoney('1200.5 JPY')).toMatchObject({ ok: false, error: { code: 'not-money' } });
    expect(parseMoney('£-5.00')).toMatchObject({ ok: false, error: { code: 'not-money' } });
  });

  it('reads back every amount it can be written as', () => {
    fc.assert(
      // Seven digits before the point at the most, whatever the currency has behind it.
      fc.property(fc.nat(9_999_999), fc.constantFrom(...CURRENCIES), (minor, currency) => {
        const places = currencyDigits(currency);
        const digits = String(minor).padStart(places + 1, '0');
        const written = `${digits.slice(0, digits.length - places)}${places === 0 ? '' : `.${digits.slice(-places)}`}`;
        expect(parseMoney(`${written} ${currency}`)).toEqual({
          ok: true,
          value: { minor, currency, written: `${written} ${currency}` },
        });
      }),
    );
  });

  it('by the hour and the metre', () => {
    expect(parseRate('£18.00 per hour', 'hour')).toMatchObject({ ok: true, value: { minor: 1800 } });
    expect(parseRate('£0.95/m', 'm')).toMatchObject({ ok: true, value: { minor: 95 } });
    expect(parseRate('£18.00', 'hour')).toMatchObject({ ok: false, error: { code: 'unit-missing' } });
    expect(parseRate('£18.00 per day', 'hour')).toMatchObject({ ok: false, error: { code: 'unit-wrong' } });
  });
});

describe('short names, bead lines, dates', () => {
  it('short names', () => {
    for (const good of ['slate-6', 'a', '2', 'crimp-1-silver']) expect(isId(good)).toBe(true);
    for (const bad of ['', 'Slate', 'a--b', '-a', 'a-', 'a b', '../a', 'ä', 'a'.repeat(49)])
      expect(isId(bad)).toBe(false);
  });

  it('bead lines', () => {
    expect(beadLine.parse('slate-6')).toEqual({ component: 'slate-6', count: 1 });
    expect(beadLine.parse('2 slate-6')).toEqual({ component: 'slate-6', count: 2 });
    expect(beadLine.parse('2 × slate-6')).toEqual({ component: 'slate-6', count: 2 });
    for (const bad of ['0 slate-6', 'slate 6', '-1 slate', '2']) {
      const parsed = beadLine.safeParse(bad);
      // “2” alone is a short name, and names a component that won't be found.
      expect(parsed.success, bad).toBe(bad === '2');
    }
  });

  it('dates', () => {
    for (const good of [2024, '2024-05', '2024-02-29']) expect(date.safeParse(good).success).toBe(true);
    for (const bad of ['2023-02-29', '2024-13', '24-05-01', 'May 2024'])
      expect(date.safeParse(bad).success).toBe(false);
  });
});
