/** What a buyer pays for a size. Integer minor units, no floating-point money. */
import type { Rules } from '../../design/rules.ts';
import type { Counts, Design } from '../../design/design.ts';
import { usualCounts } from '../../design/usualCounts.ts';
import { PARTS, ruleSum } from './parts.ts';
import { over } from './whole.ts';

/** A whole price in hundredths of a percent, which a fee is stated in. */
const WHOLE = 10_000;

/** What selling at a price leaves of it, a fee's amount a sale not yet taken off; in ten-thousandths of a minor unit. */
function keptTenThousandths(priceMinor: number, { price: { fees } }: Rules): number {
  return priceMinor * (WHOLE - (fees?.hundredths ?? 0));
}

/** The least price as the shop writes prices of which selling leaves so much: its step and its ending. */
function leastPrice(neededTenThousandths: number, rules: Rules): number {
  const step = Math.max(1, Math.round(rules.price.roundToMinor));
  const ending = rules.price.endingMinor ?? 0;
  const short = neededTenThousandths - keptTenThousandths(ending, rules);
  return over(short, keptTenThousandths(step, rules)) * step + ending;
}

/** What selling a piece at this price takes off it by the shop's rule; the share rounded up. Nothing off a price of nothing. */
export function feesMinor(priceMinor: number, rules: Rules): number {
  if (priceMinor === 0) return 0;
  const { hundredths = 0, eachMinor = 0 } = rules.price.fees ?? {};
  return over(priceMinor * hundredths, WHOLE) + eachMinor;
}

/** Price of a piece by the shop's rule alone: marked-up materials, labour, packing, and fees on top of them. */
export function rulePrice(design: Design, counts: Counts, rules: Rules): number {
  // Whole minor units are all that a step or a fee can be told in.
  const netMinor = over(ruleSum(design, counts, rules), PARTS) + rules.price.packingMinor;
  return leastPrice((netMinor + (rules.price.fees?.eachMinor ?? 0)) * WHOLE, rules);
}

/**
 * Price of one piece with these counts: the listed price and, by the shop's
 * rule, what material and work are more than in the piece as listed, with what
 * selling takes of it. Never below the listed price unless the shop says that a
 * smaller size costs less; never below nothing. The listed price itself is never
 * rounded.
 * @param listed what the listed price is for, where `design` has another clasp or pendant.
 */
export function priceOf(
  design: Design,
  counts: Counts,
  rules: Rules,
  listedMinor: number,
  listed: Design = design,
): number {
  const more = ruleSum(design, counts, rules) - ruleSum(listed, usualCounts(listed), rules);
  if (more === 0 || (more < 0 && !rules.price.smallerCostsLess)) return listedMinor;
  const price = leastPrice(keptTenThousandths(listedMinor, rules) + over(more, PARTS) * WHOLE, rules);
  // Rounding up must not make a smaller piece dearer than the listed one.
  return more < 0 ? Math.max(0, Math.min(listedMinor, price)) : price;
}
