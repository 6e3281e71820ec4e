/** Prices: the shop's way to write them, and the listed one against the shop's own rule. */
import { rulePrice } from '#core/sizing/price/price.ts';
import type { Rules } from '#core/design/rules.ts';
import { usual } from '#core/sizing/usual.ts';
import type { Design } from '#core/design/design.ts';
import type { Entry } from '../read/entry.ts';
import type { Problem } from '../read/problem.ts';
import type { AuthoredPiece } from '../schemas/piece.ts';
import type { AuthoredRules } from '../schemas/shop.ts';

/** What prices end on is less than the step that they go up by. */
export function assertEnding(entry: Pick<Entry<AuthoredRules>, 'value' | 'problemAt'>): Problem[] {
  const { 'ends-on': ending, 'round-up-to': step } = entry.value.price;
  if (ending === undefined || ending.minor === 0 || ending.minor < step.minor) return [];
  const error = { code: 'ending-beyond-step', ending: ending.written, step: step.written } as const;
  return [entry.problemAt(['price', 'ends-on'], error)];
}

/** A remark where a piece that can be bought is listed below the rule. The price is the maker's to set. */
export function noteLowPrice(entry: Entry<AuthoredPiece>, design: Design, rules: Rules): Problem[] {
  const { status, price } = entry.value;
  const ruleMinor = rulePrice(design, usual(design), rules);
  if (status === 'past' || price.minor >= ruleMinor) return [];
  return [
    entry.problemAt(['price'], {
      code: 'price-below-rule',
      listedMinor: price.minor,
      ruleMinor,
      currency: price.currency,
    }),
  ];
}
