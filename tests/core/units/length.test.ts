import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MOST_LENGTH_MM, MOST_LENGTH_TEXT, parseLength } from '#core/units/length.ts';

describe('what people write', () => {
  it.each([
    ['6 1/2', 165.1, 'in'],
    ['6½ in', 165.1, 'in'],
    ['6 ½', 165.1, 'in'],
    ['6-1/2 in', 165.1, 'in'],
    ['6 and 1/2 inches', 165.1, 'in'],
    ['6 und 1/2 Zoll', 165.1, 'in'],
    ['7 und 13/16 Zoll', 198.4375, 'in'],
    ['6\t \t1/2 in', 165.1, 'in'],
    ['6.5"', 165.1, 'in'],
    ['6.5”', 165.1, 'in'],
    ['6.5″', 165.1, 'in'],
    ["6.5''", 165.1, 'in'],
    ['6,5 in.', 165.1, 'in'],
    ['.5 in', 12.7, 'in'],
    ['½ inch', 12.7, 'in'],
    ['1/2 in', 12.7, 'in'],
    ['13/2 in', 165.1, 'in'],
    ['6⁄2 in', 76.2, 'in'],
    ['7⅞ ins', 200.025, 'in'],
    ['16.5 cm', 165, 'cm'],
    ['16,5 cm', 165, 'cm'],
    ['16.5CM', 165, 'cm'],
    ['16,5 Zentimeter', 165, 'cm'],
    ['16.51 cms', 165.1, 'cm'],
    ['165mm', 165, 'mm'],
    ['165 millimetres', 165, 'mm'],
    ['165 Millimeter', 165, 'mm'],
    ['+165 mm', 165, 'mm'],
    ['165. mm', 165, 'mm'],
    ['  165 \u00a0 mm  ', 165, 'mm'],
    ['１６５ｍｍ', 165, 'mm'],
    ['0.25mm', 0.25, 'mm'],
  ] as const)('%j', (text, mm, unit) => {
    expect(parseLength(text, 'in')).toEqual({ ok: true, mm, unit, text: text.trim() });
  });

  it.each([
    ['in', 165.1],
    ['cm', 65],
    ['mm', 6.5],
  ] as const)('a bare 6.5 is in the unit that stands: %s', (unit, mm) => {
    expect(parseLength('6.5', unit)).toEqual({ ok: true, mm, unit, text: '6.5' });
  });
});

describe('what can’t be read', () => {
  it.each([
    ['', { code: 'empty' }],
    ['   ', { code: 'empty' }],
    ['six', { code: 'not-a-number', text: 'six' }],
    ['in', { code: 'not-a-number', text: 'in' }],
    ['"', { code: 'not-a-number', text: '"' }],
    ['1/2/3', { code: 'not-a-number', text: '1/2/3' }],
    ['1.2.3 cm', { code: 'not-a-number', text: '1.2.3 cm' }],
    ['6 / cm', { code: 'not-a-number', text: '6 / cm' }],
    ['1/0 in', { code: 'not-a-number', text: '1/0 in' }],
    ['12345678 mm', { code: 'not-a-number', text: '12345678 mm' }],
    ['0.12345678 mm', { code: 'not-a-number', text: '0.12345678 mm' }],
    ['12345678 1/2 in', { code: 'two-measures', text: '12345678 1/2 in' }],
    ['€6', { code: 'not-a-number', text: '€6' }],
    ['6 ft', { code: 'unknown-unit', unit: 'ft' }],
    ["6'", { code: 'unknown-unit', unit: "'" }],
    ['6 m', { code: 'unknown-unit', unit: 'm' }],
    ['1e5', { code: 'unknown-unit', unit: 'e5' }],
    ['6 constructor', { code: 'unknown-unit', unit: 'constructor' }],
    ['6 in cm', { code: 'unknown-unit', unit: 'in cm' }],
    ['6 7 in', { code: 'two-measures', text: '6 7 in' }],
    ['6-7 in', { code: 'two-measures', text: '6-7 in' }],
    ['6 – 7 in', { code: 'two-measures', text: '6 – 7 in' }],
    ['6.5-7 in', { code: 'two-measures', text: '6.5-7 in' }],
    ['6 to 7 in', { code: 'two-measures', text: '6 to 7 in' }],
    ['6 in 5', { code: 'two-measures', text: '6 in 5' }],
    ['6 bis 7 cm', { code: 'two-measures', text: '6 bis 7 cm' }],
    ['6 or 7', { code: 'two-measures', text: '6 or 7' }],
    ['0', { code: 'not-positive', text: '0' }],
    ['0/3 in', { code: 'not-positive', text: '0/3 in' }],
    ['-5 cm', { code: 'not-positive', text: '-5 cm' }],
    ['−1/2 in', { code: 'not-positive', text: '−1/2 in' }],
    ['10000.1 mm', { code: 'too-large', mostMm: MOST_LENGTH_MM }],
    ['1'.repeat(MOST_LENGTH_TEXT + 1), { code: 'text-too-long', most: MOST_LENGTH_TEXT }],
  ])('%j', (text, problem) => {
    expect(parseLength(text, 'in')).toEqual({ ok: false, problem });
  });

  it('the caps themselves can be read', () => {
    expect(parseLength('10000 mm', 'in')).toMatchObject({ ok: true, mm: 10_000 });
    expect(parseLength(`${' '.repeat(20)}16 cm`, 'in')).toMatchObject({ ok: true, mm: 160 });
    expect(parseLength('0.1234567 mm', 'in')).toMatchObject({ ok: true, mm: 0.1234567 });
    expect(parseLength(`${'0'.repeat(6)}1 mm${' '.repeat(MOST_LENGTH_TEXT)}`, 'in')).toMatchObject({
      ok: true,
      mm: 1,
    });
  });

  it('what isn’t text is empty', () => {
    expect(parseLength(undefined as unknown as string, 'in')).toEqual({
      ok: false,
      problem: { code: 'empty' },
    });
  });
});

describe('properties', () => {
  const thousandths = fc.integer({ min: 1, max: 390_000 });

  it('inches and the same in millimetres are one number', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 3000 }), (eighths) => {
        const inches = parseLength(`${Math.floor(eighths / 8)} ${eighths % 8}/8 in`, 'mm');
        const millimetres = parseLength(`${(eighths * 3175) / 1000} mm`, 'in');
        expect(inches.ok && millimetres.ok && inches.mm === millimetres.mm).toBe(true);
      }),
    );
  });

  it('a decimal comma is a decimal point, cm are ten mm', () => {
    fc.assert(
      fc.property(thousandths, (value) => {
        const text = (value / 1000).toFixed(3);
        const point = parseLength(`${text} cm`, 'in');
        const comma = parseLength(`${text.replace('.', ',')}cm`, 'in');
        expect(point.ok && comma.ok && point.mm === comma.mm && point.mm === value / 100).toBe(true);
      }),
    );
  });

  it('any text at all: an answer, never a throw, never a number that is none', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.string({ unit: 'grapheme' }),
          fc.stringMatching(/^[\d ½/.,'"-]{0,12}(in|cm|mm)?$/),
        ),
        (text) => {
          const found = parseLength(text, 'cm');
          expect(!found.ok || (found.mm > 0 && found.mm <= MOST_LENGTH_MM)).toBe(true);
        },
      ),
      { numRuns: 5000 },
    );
  });
});

describe('each mark, where it alone decides', () => {
  // The fallback is another unit than the one written, so that a lost mark shows.
  it.each([
    ['6.5“', 165.1],
    ['6.5”', 165.1],
    ['6.5„', 165.1],
    ['6.5″', 165.1],
    ['6.5〃', 165.1],
    ['6.5’’', 165.1],
    ['6.5‘‘', 165.1],
    ['6.5′′', 165.1],
    ['6.5´´', 165.1],
    ['6.5``', 165.1],
    ['16 and 1/2 in', 419.1],
    ['6 and 11/16 in', 169.8625],
    ['6 and 3 / 16 in', 157.1625],
    ['6   1/2\t in', 165.1],
    ['6 1/2 inches .', 165.1],
  ])('%s', (text, mm) => {
    expect(parseLength(text, 'cm')).toEqual({ ok: true, mm, unit: 'in', text: text.trim() });
  });

  it('a unit without a figure is no number, and a dot within a unit stays in it', () => {
    expect(parseLength(' in', 'cm')).toMatchObject({ ok: false, problem: { code: 'not-a-number' } });
    expect(parseLength('-  mm', 'cm')).toMatchObject({ ok: false, problem: { code: 'not-a-number' } });
    expect(parseLength('6 i.n', 'cm')).toEqual({ ok: false, problem: { code: 'unknown-unit', unit: 'i.n' } });
  });

  it('“and” joins only at the start, and a figure in front of a word stays two measures', () => {
    expect(parseLength('5 6 and 1/2 in', 'cm').ok).toBe(false);
    expect(parseLength('x6 1/2 in', 'cm').ok).toBe(false);
  });

  it('the longest text that is read holds just as many characters as it may', () => {
    const longest = `6${' '.repeat(MOST_LENGTH_TEXT - 3)}in`;
    expect(longest).toHaveLength(MOST_LENGTH_TEXT);
    expect(parseLength(longest, 'cm')).toMatchObject({ ok: true, mm: 152.4 });
    expect(parseLength(`6 ${longest.slice(1)}`, 'cm')).toMatchObject({
      ok: false,
      problem: { code: 'text-too-long' },
    });
  });
});
