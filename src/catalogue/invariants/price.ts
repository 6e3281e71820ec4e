/** The listed price against the shop's own rule. */
import { rulePrice } from '#core/sizing/price/price.ts';
import type { Rules } from '#core/design/rules.ts';
import { usual } from '#core/sizing/usual.ts';
import type { Design } from '#core/design/design.ts';
import type { Entry } from '../read/entry.ts';
import type { Problem } from '../read/problem.ts';
import type { AuthoredPiece } from '../schemas/piece.ts';

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
