/** What the shop's rule charges for material and work, so finely that nothing has been rounded yet. */
import type { Rules } from '../../design/rules.ts';
import type { Counts, Design } from '../../design/design.ts';
import { materialsMilli } from './costs.ts';
import { minutesOf } from './minutes.ts';

/**
 * Parts of a minor unit that sums are kept in, so that thousandths × percent
 * (100,000) and hundredths of minutes × hourly rate (6,000) both come out
 * whole: their least common multiple.
 */
export const PARTS = 300_000;

/** In `PARTS` of a minor unit. */
export type RuleParts = {
  readonly material: number;
  /** What is charged on material beyond its cost; below 0 where less than its cost is charged. */
  readonly markUp: number;
  readonly labour: number;
};

/** Packing, fees and rounding come on top. */
export function ruleParts(design: Design, counts: Counts, rules: Rules): RuleParts {
  const { materialPercent, labourMinorPerHour } = rules.price;
  const milli = materialsMilli(design, counts, rules);
  const hundredths = Math.round(minutesOf(design, counts, rules) * 100);
  return {
    material: milli * (PARTS / 1000),
    markUp: milli * (Math.round(materialPercent) - 100) * (PARTS / 100_000),
    labour: hundredths * labourMinorPerHour * (PARTS / 6_000),
  };
}

/** All three together. */
export function ruleSum(design: Design, counts: Counts, rules: Rules): number {
  const { material, markUp, labour } = ruleParts(design, counts, rules);
  return material + markUp + labour;
}
