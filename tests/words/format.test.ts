import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseLength } from '#core/units/length.ts';
import {
  formatDate,
  formatDateTime,
  formatFor,
  formatLength,
  formatList,
  formatMoney,
  formatNumber,
} from '#words/format.ts';
import { isLang, LANGS } from '#words/lang.ts';
import { inZone } from '#tests/support/zone.ts';

/** Blanks that don't break, as plain ones. */
const plain = (text: string): string => text.replace(/[\u00a0\u202f]/g, ' ');

describe('lengths as a maker says them', () => {
  // One inch is 25.4 mm, exactly (NIST SP 811 (2008), App. B.8).
  test.each([
    [165.1, '6½ in'],
    [168.275, '6⅝ in'],
    [25.4, '1 in'],
    [12.7, '½ in'],
    [3.175, '⅛ in'],
    [1, '0 in'],
    [0, '0 in'],
    [-12.7, '−½ in'],
    [-1, '0 in'],
    // Rounds up through the whole inch.
    [25.3, '1 in'],
    [444.5, '17½ in'],
  ])('%d mm is %s', (mm, text) => {
    expect(plain(formatLength(mm, 'in', 'en'))).toBe(text);
  });

  test('centimetres to the millimetre, millimetres whole, in each spelling', () => {
    expect(plain(formatLength(165.1, 'cm', 'en'))).toBe('16.5 cm');
    expect(plain(formatLength(165.1, 'cm', 'de'))).toBe('16,5 cm');
    expect(plain(formatLength(160.2, 'cm', 'de'))).toBe('16 cm');
    expect(plain(formatLength(164.6, 'mm', 'en'))).toBe('165 mm');
    expect(plain(formatLength(165.1, 'in', 'de'))).toBe('6½ Zoll');
  });

  test('what is written can be read again, to half of its last step', () => {
    const halfStep = { in: 25.4 / 16, cm: 0.5, mm: 0.5 } as const;
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 3000, noNaN: true }),
        fc.constantFrom('in', 'cm', 'mm'),
        fc.constantFrom(...LANGS),
        (mm, unit, lang) => {
          // From a thousand on, a language's thousands mark would be in it: nobody writes lengths so.
          fc.pre(unit !== 'mm' || mm < 999);
          const read = parseLength(formatLength(mm, unit, lang), 'mm');
          expect(read.ok && read.unit).toBe(unit);
          expect(read.ok ? Math.abs(read.mm - mm) : Infinity).toBeLessThanOrEqual(halfStep[unit] + 1e-9);
        },
      ),
    );
  });
});

describe('money', () => {
  // Minor units by ISO 4217: pound 2, yen 0, Kuwaiti dinar 3.
  test.each([
    [4800, 'GBP', 'en', '£48.00'],
    [4800, 'JPY', 'en', 'JP¥4,800'],
    [4800, 'KWD', 'en', 'KWD 4.800'],
    [123456, 'GBP', 'de', '1.234,56 £'],
    [5, 'EUR', 'de', '0,05 €'],
  ] as const)('%d of %s in %s is %s', (minor, currency, lang, text) => {
    expect(plain(formatMoney(minor, currency, lang))).toBe(text);
  });
});

test('dates are written out in the language, instants as they fall where it runs', async () => {
  expect(formatDate('2026-11-25T18:40:00Z', 'en')).toBe('25 November 2026');
  expect(formatDate('2026-11-25T18:40:00Z', 'de')).toBe('25. November 2026');
  expect(plain(formatDateTime('2026-11-25T18:40:00Z', 'en'))).toBe('25 November 2026 at 18:40');
  await inZone('Europe/Berlin', () => {
    expect(formatDate('2026-11-25T23:40:00Z', 'de')).toBe('26. November 2026');
    expect(formatDate('2026-11-25', 'de')).toBe('25. November 2026');
    expect(plain(formatDateTime('2026-11-25T18:40:00Z', 'en'))).toBe('25 November 2026 at 19:40');
  });
});

test('lists and numbers follow the language', () => {
  expect(formatList(['a', 'b', 'c'], 'en')).toBe('a, b and c');
  expect(formatList(['a', 'b'], 'de')).toBe('a und b');
  expect(formatNumber(1234.5, 'de', 1)).toBe('1.234,5');
});

test('short lengths are eighths or whole millimetres, fine ones tenths of a millimetre', () => {
  expect(plain(formatFor('en', 'in', 'GBP').short(6.35))).toBe('¼ in');
  expect(plain(formatFor('en', 'cm', 'GBP').short(6.35))).toBe('6 mm');
  expect(plain(formatFor('en', 'in', 'GBP').short(1.2))).toBe('1 mm');
  expect(plain(formatFor('en', 'in', 'GBP').short(1.6))).toBe('⅛ in');
  expect(plain(formatFor('de', 'in', 'GBP').fine(0.25))).toBe('0,3 mm');
});

test('a language is known by its code alone', () => {
  expect(['en', 'de', 'fr', '', null, 1].map(isLang)).toEqual([true, true, false, false, false, false]);
});

describe('lengths at the bench', () => {
  const inches = formatFor('en', 'in', 'GBP');
  const metric = formatFor('de', 'cm', 'GBP');
  test.each([
    [182.5, '7³⁄₁₆ in (182.5 mm)', '182,5 mm (7³⁄₁₆ Zoll)'],
    [25.4, '1 in (25.5 mm)', '25,5 mm (1 Zoll)'],
    [3, '⅛ in (3 mm)', '3 mm (⅛ Zoll)'],
    [23.8, '¹⁵⁄₁₆ in (24 mm)', '24 mm (¹⁵⁄₁₆ Zoll)'],
    [0.5, '0.5 mm', '0,5 mm'],
    [0, '0 mm', '0 mm'],
  ])('%f is %s, as a ruler shows it', (mm, english, german) => {
    expect(plain(inches.ruler(mm))).toBe(english);
    expect(plain(metric.ruler(mm))).toBe(german);
  });

  test('what is cut is never too short, and no mark longer for rounding noise', () => {
    expect(plain(inches.ruler(316.4, 'up'))).toBe('12½ in (316.5 mm)');
    expect(plain(inches.ruler(25.4 + 1e-9, 'up'))).toBe('1 in (25.5 mm)');
    expect(plain(inches.ruler(25.5, 'up'))).toBe('1¹⁄₁₆ in (25.5 mm)');
  });

  test('in its parts is the same', () => {
    const { lead, other } = inches.rulerParts(182.5);
    expect(`${lead} (${other})`).toBe(inches.ruler(182.5));
    expect(inches.rulerParts(0.5).other).toBe('');
  });
});

describe('how far two lengths are apart', () => {
  const inches = formatFor('en', 'in', 'GBP');
  const centimetres = formatFor('en', 'cm', 'GBP');

  test('is as short as any where it agrees with both as they are read', () => {
    expect(inches.apart(254, 260.35)).toBe(inches.short(6.35));
    expect(inches.apart(260.35, 254)).toBe(inches.short(6.35));
    expect(centimetres.apart(254, 260)).toBe(centimetres.short(6));
  });

  test('is told finely where both read alike, or further apart than they are', () => {
    // 10½ in both.
    expect(inches.length(265.3)).toBe(inches.length(268));
    expect(inches.apart(265.3, 268)).toBe(inches.fine(2.7));
    expect(centimetres.apart(254.6, 255.4)).toBe(centimetres.fine(0.8));
  });

  test('never belies the two lengths beside it', () => {
    const eighths = (text: string): number => {
      const read = parseLength(text, 'in');
      return read.ok ? Math.round((read.mm / 25.4) * 8) : NaN;
    };
    fc.assert(
      fc.property(
        fc.double({ min: 100, max: 900, noNaN: true }),
        fc.double({ min: -20, max: 20, noNaN: true }),
        (from, by) => {
          const told = inches.apart(from, from + by);
          if (!told.endsWith('in')) return;
          const [one, other] = [inches.length(from), inches.length(from + by)].map(eighths) as [
            number,
            number,
          ];
          expect(eighths(told)).toBe(Math.abs(other - one));
        },
      ),
    );
  });
});
