/**
 * Checks a price against the shop's rules. It is worked out anew, bead by bead
 * and in whole numbers alone: everything is brought to one denominator, and a
 * price is found by asking whether the next lower one would do.
 */
import type { Component } from '../design/component.ts';
import { cutLength } from '../design/ends/cut.ts';
import type { Counts, Design } from '../design/design.ts';
import type { Rules } from '../design/rules.ts';
import { strung } from './parts.ts';

/** What a price is for: the piece, and the one that the listed price was set for. */
export type Priced = {
  readonly rules: Rules;
  readonly listedMinor: number;
  /** Left out: the design itself. */
  readonly listed?: Design;
};

/** A minor unit in the parts that all of this is counted in: any number that thousandths, percent and hundredths of minutes divide. */
const UNIT = 6_000_000_000n;
/** Shares of a price are told in hundredths of a percent. */
const SHARES = 10_000n;

/** Material at the shop's rate and work at hers, in `UNIT`s; the wire's millimetres rounded up, strand by strand. */
function ruleUnits(design: Design, counts: Counts, rules: Rules): bigint {
  const { ends, hanging, components, wire } = design;
  let costMilli = 0n;
  let strungCount = 0;
  const pay = (id: string | null): void => {
    const part: Component | undefined = id === null ? undefined : components[id];
    costMilli += BigInt(Math.round(1000 * (part?.costMinor ?? 0)));
  };
  design.strands.forEach((strand, index) => {
    const ids = strung(strand, counts[index] ?? []);
    ids.forEach(pay);
    strungCount += ids.length;
    for (const id of [ends.crimp, ends.cover, ends.guard]) [id, id].forEach(pay);
    const beadsMm = ids.reduce((sum, id) => sum + (components[id]?.alongMm ?? 0), 0);
    const cutMm = Math.ceil(Math.round(1000 * cutLength(design, rules, beadsMm, 0).totalMm) / 1000);
    costMilli += BigInt(Math.round(cutMm * wire.costMinorPerM));
  });
  [ends.clasp, ends.ring, hanging?.pendant ?? null, ...(hanging?.rings ?? [])].forEach(pay);
  const { perPiece, perStrand, perEnd, perBead } = rules.minutes;
  const minutes = perPiece + design.strands.length * (perStrand + 2 * perEnd) + strungCount * perBead;
  const { materialPercent, labourMinorPerHour } = rules.price;
  const material = (costMilli * BigInt(Math.round(materialPercent)) * UNIT) / 100_000n;
  const labour = (BigInt(Math.round(100 * minutes)) * BigInt(labourMinorPerHour) * UNIT) / 6000n;
  return material + labour;
}

/** True where a price is the one that the shop's rules ask for these counts. */
export function isPrice(design: Design, counts: Counts, priceMinor: number, priced: Priced): boolean {
  const { rules, listedMinor, listed = design } = priced;
  const { smallerCostsLess, roundToMinor, endingMinor = 0, fees } = rules.price;
  const usual = listed.strands.map(({ sections }) => sections.map((section) => section.usual));
  const more = ruleUnits(design, counts, rules) - ruleUnits(listed, usual, rules);
  if (more === 0n || (more < 0n && !smallerCostsLess)) return priceMinor === listedMinor;
  // In whole minor units, rounded up; division of whole numbers cuts towards nothing.
  const moreMinor = more > 0n ? (more + UNIT - 1n) / UNIT : more / UNIT;
  const kept = SHARES - BigInt(fees?.hundredths ?? 0);
  /** Whether selling at a price leaves what selling the listed piece does, and what is more. */
  const pays = (minor: number): boolean =>
    BigInt(minor) * kept >= BigInt(listedMinor) * kept + moreMinor * SHARES;
  const step = Math.max(1, Math.round(roundToMinor));
  /** The highest price not above this that the shop writes. */
  const writtenUpTo = (minor: number): number =>
    Math.floor((minor - endingMinor) / step) * step + endingMinor;
  const isLeast = writtenUpTo(priceMinor) === priceMinor && pays(priceMinor) && !pays(priceMinor - step);
  if (more > 0n) return isLeast;
  // Less is asked for less: neither more than the listed price nor less than nothing.
  if (priceMinor === listedMinor && !pays(writtenUpTo(listedMinor - 1))) return true;
  if (priceMinor === 0) return pays(writtenUpTo(0));
  return priceMinor > 0 && priceMinor < listedMinor && isLeast;
}
