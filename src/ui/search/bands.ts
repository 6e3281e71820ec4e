/** Bands that prices and lengths are looked through by, named in the reader's words. */
import { INCH_MM } from '#core/units/unit.ts';
import { currencyDigits, formatLength } from '#words/format.ts';
import type { Lang } from '#words/lang.ts';
import { pageWords } from '#words/words.ts';
import { priceName } from './priceName.ts';

/** Where price bands part, in the currency's whole units. */
const PRICES = [30, 50, 75, 100, 150, 250] as const;

/** Where length bands part: bracelets, chokers and the named lengths of necklaces (common practice, no source). */
const LENGTHS_MM: Readonly<Record<Lang, readonly number[]>> = {
  en: [10, 15, 17, 19, 22, 28].map((inches) => inches * INCH_MM),
  de: [250, 380, 430, 480, 560, 700],
};

/** The band of a value among ascending borders; a border belongs to the band above it. */
function band(
  value: number,
  borders: readonly number[],
  name: (border: number) => string,
  lang: Lang,
): string {
  const words = pageWords(lang).find;
  const above = borders.findIndex((border) => value < border);
  const at = (index: number): string => name(borders[index] ?? 0);
  if (above === 0) return words.under(at(0));
  if (above < 0) return words.over(at(borders.length - 1));
  return words.between(at(above - 1), at(above));
}

/** Where price bands part, in minor units. */
export const priceBorders = (currency: string): readonly number[] =>
  PRICES.map((price) => price * 10 ** currencyDigits(currency));

export function priceBand(minor: number, currency: string, lang: Lang): string {
  const name = (border: number): string => priceName(border, currency, lang);
  return band(minor, priceBorders(currency), name, lang);
}

export function lengthBand(lengthMm: number, lang: Lang): string {
  const unit = lang === 'de' ? 'cm' : 'in';
  return band(lengthMm, LENGTHS_MM[lang], (border) => formatLength(border, unit, lang), lang);
}

/** Every band from the lowest to the highest, for a list that isn't in the order of its letters. */
export function priceBands(currency: string, lang: Lang): string[] {
  const unit = 10 ** currencyDigits(currency);
  return [0, ...PRICES].map((price) => priceBand(price * unit, currency, lang));
}

export function lengthBands(lang: Lang): string[] {
  return [0, ...LENGTHS_MM[lang]].map((mm) => lengthBand(mm, lang));
}
