/** Prices as bands and marks name them. */
import { formatMoney } from '#words/format.ts';
import type { Lang } from '#words/lang.ts';

/** A price without the noughts of a whole one. */
export const priceName = (minor: number, currency: string, lang: Lang): string =>
  formatMoney(minor, currency, lang).replace(/[.,]00(?!\d)/, '');
