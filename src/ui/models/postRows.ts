/** What posting costs, as a page lists it. */
import type { PostGroup, PostRules } from '#core/post/rules.ts';
import { countryName, formatList, formatMoney, formatNumber } from '#words/format.ts';
import type { Lang } from '#words/lang.ts';
import { pageWords } from '#words/words.ts';

export type PostRow = {
  /** The countries of the group, by name. */
  readonly where: string;
  /** Each band with its price, and from which value on it is free. */
  readonly costs: string;
};

/** Grams below a kilogram, kilograms from there on. */
const KILOGRAM = 1000;

export function postRows({ groups }: PostRules, currency: string, lang: Lang): PostRow[] {
  const words = pageWords(lang).piece.post;
  const money = (minor: number): string => formatMoney(minor, currency, lang);
  const weight = (grams: number): string =>
    grams < KILOGRAM
      ? `${formatNumber(grams, lang)}\u00a0g`
      : `${formatNumber(grams / KILOGRAM, lang, 2)}\u00a0kg`;
  const whereOf = ({ countries, elsewhere }: PostGroup): string =>
    elsewhere
      ? words.elsewhere
      : formatList(
          countries.map((code) => countryName(code, lang)),
          lang,
        );
  return groups.map((group) => ({
    where: whereOf(group),
    costs: [
      ...group.bands.map(({ upToG, priceMinor }) => words.band(weight(upToG), money(priceMinor))),
      ...(group.freeFromMinor === null ? [] : [words.free(money(group.freeFromMinor))]),
    ].join(', '),
  }));
}
