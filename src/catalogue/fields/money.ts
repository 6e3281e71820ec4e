/** Money as a maker writes it, `£48.00` or `48.00 GBP`, in integer minor units. */
import { currencyDigits } from '#words/format.ts';
import { refuse, type Parsed } from './parsed.ts';

export type Money = { readonly minor: number; readonly currency: string; readonly written: string };

const symbols: Readonly<Record<string, string>> = { '£': 'GBP', '€': 'EUR', $: 'USD' };

/** Currencies that a shop may use (ISO 4217). */
export const CURRENCIES = [
  'GBP',
  'EUR',
  'USD',
  'CHF',
  'SEK',
  'NOK',
  'DKK',
  'PLN',
  'CAD',
  'AUD',
  'NZD',
  'JPY',
] as const;

const form = /^([£€$]?)\s*(\d{1,7})(?:\.(\d{1,2}))?\s*([A-Z]{3})?$/;

/** Figures with marks between thousands, a comma before decimals, or both; `35.000` alone may mean either and is left out. */
const MARKED =
  /^(?:\d{1,3}(?:[,'’ \u00a0\u202f]\d{3})+(?:\.\d{1,2})?|\d{1,3}(?:[.'’ \u00a0\u202f]\d{3})*,\d{1,2}|\d{1,3}(?:\.\d{3}){2,})$/;

/** The amount as it has to be written; null where it isn't only a matter of marks. */
function withoutMarks(written: string): string | null {
  const [, before = '', figures = '', symbol = '', code = ''] =
    /^([£€$]?)\s*(\d[\d.,'’ \u00a0\u202f]*?)\s*(?:([£€$])|([A-Z]{3}))?$/.exec(written) ?? [];
  if (!MARKED.test(figures)) return null;
  const [, whole = '', decimals] = /^(.*?)(?:[.,](\d{1,2}))?$/.exec(figures) ?? [];
  const amount = [whole.replace(/\D/g, ''), ...(decimals === undefined ? [] : [decimals])].join('.');
  const meant = `${before}${symbol}${amount} ${code}`.trim();
  return form.test(meant) ? meant : null;
}

/** Reads an amount. Digits are counted, never multiplied as floating point. */
export function parseMoney(input: string | number | boolean): Parsed<Money> {
  const written = String(input).trim();
  const match = form.exec(written);
  if (match === null) {
    const meant = withoutMarks(written);
    return refuse(
      meant === null ? { code: 'not-money', value: written } : { code: 'money-marks', value: written, meant },
    );
  }
  const [, symbol = '', whole = '', decimals = '', code] = match;
  const currency = code ?? symbols[symbol];
  if (currency === undefined) return refuse({ code: 'price-without-currency', value: written });
  if (!CURRENCIES.some((known) => known === currency))
    return refuse({ code: 'currency-unknown', value: written, currency });
  const places = currencyDigits(currency);
  if (decimals.length > places) return refuse({ code: 'not-money', value: written });
  return { ok: true, value: { minor: Number(whole + decimals.padEnd(places, '0')), currency, written } };
}

/**
 * An amount typed without its currency, as it is written with it: decimals
 * filled up to those of the currency.
 * @param amount figures alone, a point before decimals
 * @param way before it as a sign where the currency has one, or behind it as its code
 */
export function withCurrency(amount: string, currency: string, way: 'sign' | 'code'): string {
  const [whole = '', decimals = ''] = amount.split('.');
  const places = currencyDigits(currency);
  const full = places === 0 || decimals.length > places ? amount : `${whole}.${decimals.padEnd(places, '0')}`;
  const sign = Object.keys(symbols).find((one) => symbols[one] === currency);
  return way === 'sign' && sign !== undefined ? sign + full : `${full} ${currency}`;
}

/** Reads an amount per something, `£20.00 per hour` or `£0.40 per m`. */
export function parseRate(input: string | number | boolean, per: 'hour' | 'm'): Parsed<Money> {
  const [money = '', unit, ...rest] = String(input).split(/\s+per\s+|\s*\/\s*/);
  if (unit === per && rest.length === 0) return parseMoney(money);
  const written = { value: String(input), units: `per ${per}` };
  return refuse(
    unit === undefined ? { code: 'unit-missing', ...written } : { code: 'unit-wrong', ...written, unit },
  );
}
