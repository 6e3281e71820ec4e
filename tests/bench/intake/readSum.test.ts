/** Sums as people type them. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { readSum } from '#bench/intake/readSum.ts';
import { CURRENCIES } from '#catalogue/fields/money.ts';
import { currencyDigits, formatMoney, majorAmount } from '#words/format.ts';
import { LANGS } from '#words/lang.ts';

it.each([
  ['64.50', 'GBP', 6450],
  ['64,5', 'GBP', 6450],
  [' 64 ', 'GBP', 6400],
  ['£64.50', 'GBP', 6450],
  ['64.50 gbp', 'GBP', 6450],
  ['1,250.00', 'GBP', 125_000],
  ['1.250,00 €', 'EUR', 125_000],
  ['1 250,00', 'EUR', 125_000],
  ['1 250', 'EUR', 125_000],
  ["1'250.00", 'CHF', 125_000],
  ['1,250,000', 'GBP', 125_000_000],
  ['1,250', 'JPY', 1250],
  ['￥ 1250', 'JPY', 1250],
  ['450 kr', 'SEK', 45_000],
  ['６４', 'GBP', 6400],
])('%j in %s', (text, currency, minor) => {
  expect(readSum(text, currency)).toEqual({ ok: true, minor });
});

it.each([
  ['', 'GBP', 'sum-missing'],
  ['   ', 'GBP', 'sum-missing'],
  ['0', 'GBP', 'sum-nothing'],
  ['0,00', 'GBP', 'sum-nothing'],
  ['1.250', 'EUR', 'sum-ambiguous'],
  ['1,250', 'GBP', 'sum-ambiguous'],
  ['64.505', 'GBP', 'sum-ambiguous'],
  ['1234.505', 'GBP', 'sum-too-fine'],
  ['64.50', 'JPY', 'sum-too-fine'],
  ['64.50 €', 'GBP', 'sum-other-currency'],
  ['USD 64.50', 'GBP', 'sum-other-currency'],
  ['-5', 'GBP', 'sum-unreadable'],
  ['1,25,0.00', 'GBP', 'sum-unreadable'],
  ['1.250.00', 'GBP', 'sum-unreadable'],
  ['60+4', 'GBP', 'sum-unreadable'],
  ['sixty', 'GBP', 'sum-unreadable'],
  ['1e3', 'GBP', 'sum-unreadable'],
  ['99999999999', 'GBP', 'sum-too-large'],
])('refuses %j in %s as %s', (text, currency, code) => {
  expect(readSum(text, currency)).toMatchObject({ ok: false, problem: { code } });
});

it('reads back every sum as the shop itself writes it, in each language and currency', () => {
  let read = 0;
  const sum = fc.integer({ min: 1, max: 1_000_000_000 });
  fc.assert(
    fc.property(sum, fc.constantFrom(...CURRENCIES), fc.constantFrom(...LANGS), (minor, currency, lang) => {
      expect(readSum(formatMoney(minor, currency, lang), currency)).toEqual({ ok: true, minor });
      const plain = readSum(majorAmount(minor, currency), currency);
      expect(plain).toEqual({ ok: true, minor });
      read += currencyDigits(currency) === 0 ? 1 : 2;
    }),
  );
  expect(read).toBeGreaterThan(100);
});
