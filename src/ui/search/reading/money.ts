/** Prices on the marks of what was understood. */
import { currencyDigits } from '#words/format.ts';
import { priceName } from '../priceName.ts';
import type { Vocabulary } from './vocabulary.ts';
import { fill } from './fill.ts';

/** @param most Infinity for no end; whole units of currency */
export function moneyLabel(
  leastUnits: number,
  mostUnits: number,
  { said, currency, lang }: Vocabulary,
): string {
  const unit = 10 ** currencyDigits(currency);
  const money = (units: number): string =>
    units === Infinity ? '' : priceName(Math.round(units * unit), currency, lang);
  const text = mostUnits === Infinity ? said.over : leastUnits === 0 ? said.under : said.between;
  return fill(text, { least: money(leastUnits), most: money(mostUnits) });
}
