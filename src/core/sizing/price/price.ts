/** What a buyer pays for a size. Integer minor units, no floating-point money. */
import type { Rules } from '../../design/rules.ts';
import type { Counts, Design } from '../../design/design.ts';
import { usualCounts } from '../../design/usualCounts.ts';
import { materialsMilli } from './costs.ts';
import { minutesOf } from './minutes.ts';
import { over } from './whole.ts';

/**
 * Parts of a minor unit that the sums below are kept in, so that thousandths
 * × percent (100,000) and hundredths of minutes × hourly rate (6,000) both
 * come out whole: their least common multiple.
 */
const PARTS = 300_000;

/** Price by the shop's rule before packing and rounding, in `PARTS` of a minor unit. */
function ruleParts(design: Design, counts: Counts, rules: Rules): number {
  const { materialPercent, labourMinorPerHour } = rules.price;
  const material = materialsMilli(design, counts, rules) * Math.round(materialPercent);
  const labour = Math.round(minutesOf(design, counts, rules) * 100) * labourMinorPerHour;
  return material * (PARTS / 100_000) + labour * (PARTS / 6_000);
}

/** Rounded up to the shop's step; a whole number of minor units either way. */
function rounded(parts: number, rules: Rules): number {
  const step = Math.max(1, Math.round(rules.price.roundToMinor));
  return over(parts, PARTS * step) * step;
}

/** Price of a piece by the shop's rule alone: marked-up materials, labour, packing. */
export function rulePrice(design: Design, counts: Counts, rules: Rules): number {
  return rounded(ruleParts(design, counts, rules) + rules.price.packingMinor * PARTS, rules);
}

/**
 * Price of one piece with these counts: the listed price and, by the shop's
 * rule, what material and work are more than in the piece as listed. Never
 * below the listed price unless the shop says that a smaller size costs less;
 * never below nothing. The listed price itself is never rounded.
 * @param listed what the listed price is for, where `design` has another clasp or pendant.
 */
export function priceOf(
  design: Design,
  counts: Counts,
  rules: Rules,
  listedMinor: number,
  listed: Design = design,
): number {
  const more = ruleParts(design, counts, rules) - ruleParts(listed, usualCounts(listed), rules);
  if (more === 0 || (more < 0 && !rules.price.smallerCostsLess)) return listedMinor;
  const price = rounded(listedMinor * PARTS + more, rules);
  // Rounding up must not make a smaller piece dearer than the listed one.
  return more < 0 ? Math.max(0, Math.min(listedMinor, price)) : price;
}
