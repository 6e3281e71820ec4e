/** What search engines show of one list: some of its pieces by name, and from what price they can be had. */
import { textsOf, type Piece } from '#catalogue/model/catalogue.ts';
import { formatMoney } from '#words/format.ts';
import type { Lang } from '#words/lang.ts';
import { pageWords } from '#words/words.ts';
import type { Group } from './groups.ts';

/** Pieces that are named. */
const NAMED = 3;

/**
 * @param here the pieces on this page of the list; the first of them are named, so that each page has a description of its own
 * @param currency ISO 4217 code of the pieces' prices
 */
export function groupDescription(
  { title, pieces }: Group,
  here: readonly Piece[],
  currency: string,
  lang: Lang,
): string {
  const { described } = pageWords(lang).list;
  const names = here.slice(0, NAMED).map((piece) => textsOf(piece, lang).name);
  const prices = pieces.filter(({ status }) => status !== 'past').map(({ listedMinor }) => listedMinor);
  const terms =
    prices.length === 0 ? described.past : described.from(formatMoney(Math.min(...prices), currency, lang));
  return `${described.pieces(title, names, pieces.length - names.length)} ${terms}`;
}
