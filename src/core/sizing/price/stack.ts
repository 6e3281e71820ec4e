/** What a price is made of, line by line, and what of it is left for the hours. Integer minor units. */
import type { Rules } from '../../design/rules.ts';
import type { Counts, Design } from '../../design/design.ts';
import { costsOf } from './costs.ts';
import { PARTS, ruleParts } from './parts.ts';
import { feesMinor, priceOf, rulePrice } from './price.ts';
import { over } from './whole.ts';

/**
 * `mark-up`: what the shop's rule charges on material beyond its cost. `fees`:
 * of the price by the rule. `rounding`: up to that price, and back what lines were rounded up. `own`: what the price
 * asked is above it, or below.
 */
export const STACK_LINES = [
  'beads',
  'findings',
  'wire',
  'mark-up',
  'labour',
  'packing',
  'fees',
  'rounding',
  'own',
] as const;
export type StackLine = (typeof STACK_LINES)[number];

/** What a piece sold at a price leaves. An estimate: the minutes are those of the shop's rule. */
export type Earned = {
  readonly priceMinor: number;
  /** Beads, findings and wire as she pays for them. */
  readonly materialMinor: number;
  readonly packingMinor: number;
  readonly feesMinor: number;
  /** What the price is above all of these; below 0 where it doesn't pay for them. */
  readonly leftMinor: number;
  readonly minutes: number;
  /** What is left for an hour of those minutes; null where it takes none. */
  readonly perHourMinor: number | null;
};

export type PriceStack = {
  /** Each line a whole number; together exactly `priceMinor`. */
  readonly lines: Readonly<Record<StackLine, number>>;
  /** All lines but `own`. */
  readonly ruleMinor: number;
  /** What the shop asks: `priceOf`. */
  readonly priceMinor: number;
  readonly earned: Earned;
};

/** What the price leaves once material, packing and fees are paid. @param takesFees whether selling at it takes the shop's fees */
export function earnedAt(
  design: Design,
  counts: Counts,
  rules: Rules,
  priceMinor: number,
  takesFees = true,
): Earned {
  const { beadsMinor, findingsMinor, wireMinor, packingMinor, minutes } = costsOf(design, counts, rules);
  const materialMinor = beadsMinor + findingsMinor + wireMinor;
  const fees = takesFees ? feesMinor(priceMinor, rules) : 0;
  const leftMinor = priceMinor - materialMinor - packingMinor - fees;
  return {
    ...{ priceMinor, materialMinor, packingMinor, leftMinor, minutes },
    feesMinor: fees,
    perHourMinor: minutes === 0 ? null : Math.round((60 * leftMinor) / minutes),
  };
}

/**
 * The price that the shop asks for these counts, taken apart. Each line is
 * rounded up on its own; `rounding` is what is left to the price, so that the
 * lines come to it whatever they lost.
 * @param listedMinor, listed as `priceOf` takes them
 */
export function priceStack(
  design: Design,
  counts: Counts,
  rules: Rules,
  listedMinor: number,
  listed: Design = design,
): PriceStack {
  const { beadsMinor, findingsMinor, wireMinor, labourMinor, packingMinor } = costsOf(design, counts, rules);
  const markUpMinor = over(ruleParts(design, counts, rules).markUp, PARTS);
  const ruleMinor = rulePrice(design, counts, rules);
  const priceMinor = priceOf(design, counts, rules, listedMinor, listed);
  const fees = feesMinor(ruleMinor, rules);
  const before = beadsMinor + findingsMinor + wireMinor + markUpMinor + labourMinor + packingMinor + fees;
  return {
    lines: {
      beads: beadsMinor,
      findings: findingsMinor,
      wire: wireMinor,
      'mark-up': markUpMinor,
      labour: labourMinor,
      packing: packingMinor,
      fees,
      rounding: ruleMinor - before,
      own: priceMinor - ruleMinor,
    },
    ruleMinor,
    priceMinor,
    earned: earnedAt(design, counts, rules, priceMinor),
  };
}

/** What a shop that sells on pays: a share of the price, rounded up to a whole minor unit. @param percent of the price */
export function wholesaleMinor(priceMinor: number, percent: number): number {
  return over(priceMinor * Math.round(percent * 100), 10_000);
}
