/** A sum of money as people type it: `64.50`, `64,50 €`, `£1,250`, `1 250,00`. */
import { currencyDigits } from '#words/format.ts';
import type { SumProblem } from '#words/benchCodes.ts';
import { locale, LANGS } from '#words/lang.ts';
import { CAPS } from '#order/document.ts';

export type ReadSum =
  { readonly ok: true; readonly minor: number } | { readonly ok: false; readonly problem: SumProblem };

/** Figures with what stands between them, and what may stand before or after: a currency's sign or code. */
const FORM = /^(\D*?)\s*(\d(?:[\d.,'’ ]*\d)?)\s*(\D*)$/;
/** Thousands in groups of three, all by the same sign. */
const GROUPED = /^\d{1,3}([ .,'’])\d{3}(?:\1\d{3})*$/;
const OTHER_CURRENCY = /^(?:\p{Sc}|[A-Z]{2,3}\$?|kr|zł)$/iu;

/**
 * Reads a sum; what could be read in two ways is not guessed at.
 * @param currency ISO 4217, of the sum where none is typed; another one is refused
 */
export function readSum(typed: string, currency: string): ReadSum {
  const text = typed.normalize('NFKC').trim().replace(/\s+/g, ' ');
  if (text === '') return refused({ code: 'sum-missing' });
  const [, before = '', figures, after = ''] = FORM.exec(text) ?? [];
  if (figures === undefined) return refused({ code: 'sum-unreadable', text });
  for (const sign of [before, after].filter((one) => one !== '')) {
    if (signsOf(currency).has(sign.toLowerCase())) continue;
    const code = OTHER_CURRENCY.test(sign) ? 'sum-other-currency' : 'sum-unreadable';
    return refused({ code, text, currency });
  }
  return readFigures(figures, text, currency);
}

function readFigures(figures: string, text: string, currency: string): ReadSum {
  const digits = currencyDigits(currency);
  const sign = GROUPED.exec(figures)?.[1];
  if (sign !== undefined) {
    // `1.250` may be a thousand and something, or one and a quarter with a nought too many.
    const lone = figures.split(sign).length === 2;
    if (lone && digits > 0 && /[.,]/.test(sign)) return refused({ code: 'sum-ambiguous', text });
    return inMinor(figures.replaceAll(sign, ''), '', digits);
  }
  const [, whole = figures, mark = '', part = ''] = /^(.*)([.,])(\d+)$/.exec(figures) ?? [];
  const group = GROUPED.exec(whole)?.[1];
  if (group === mark || (group === undefined && !/^\d+$/.test(whole))) {
    return refused({ code: 'sum-unreadable', text });
  }
  if (part.length > digits) return refused({ code: 'sum-too-fine', text, digits });
  return inMinor(whole.replace(/\D/g, ''), part, digits);
}

/** Digits are counted, never multiplied as floating point. */
function inMinor(whole: string, part: string, digits: number): ReadSum {
  const minor = Number(whole + part.padEnd(digits, '0'));
  if (minor === 0) return refused({ code: 'sum-nothing' });
  return minor > CAPS.minor ? refused({ code: 'sum-too-large' }) : { ok: true, minor };
}

/** How a currency is written in the languages that the bench speaks. */
function signsOf(currency: string): ReadonlySet<string> {
  const signs = LANGS.flatMap((lang) =>
    (['symbol', 'narrowSymbol', 'code'] as const).map(
      (currencyDisplay) =>
        new Intl.NumberFormat(locale(lang), { style: 'currency', currency, currencyDisplay })
          .formatToParts(0)
          .find(({ type }) => type === 'currency')?.value ?? currency,
    ),
  );
  return new Set(signs.map((sign) => sign.normalize('NFKC').toLowerCase()));
}

function refused(problem: SumProblem): ReadSum {
  return { ok: false, problem };
}
