/**
 * The shop's rules: everything the computation takes from the maker's
 * settings rather than from a piece. Millimetres, minutes, minor units.
 */
import type { Sit } from './choice.ts';
import type { PieceKind } from './design.ts';

export type Rules = {
  /** ISO 4217 code of every `…Minor` figure. */
  readonly currency: string;
  /** Accepted difference from the wanted length or inside girth, by kind. */
  readonly toleranceMm: Readonly<Record<PieceKind, number>>;
  /**
   * What a sit adds. Bracelet, anklet, collar: to the girth, giving the inside
   * girth. Necklace: to the neck-base girth estimated from the neck girth,
   * giving the finished length.
   */
  readonly easeMm: Readonly<Record<PieceKind, Readonly<Record<Sit, number>>>>;
  readonly wire: {
    /** Doubled wire run back through the end beads, per end. */
    readonly tailMm: number;
    /** Wire to hold and pull by, per end, cut off afterwards. */
    readonly gripMm: number;
    /** Snag added to the static pull, newtons. */
    readonly snagN: number;
    /** Factor that the rated break must keep over the pull. */
    readonly safetyFactor: number;
    /** A crimp's inside may exceed the wires' circle by at most this. */
    readonly crimpPlayMm: number;
  };
  readonly minutes: {
    readonly perPiece: number;
    readonly perStrand: number;
    readonly perEnd: number;
    readonly perBead: number;
  };
  readonly price: {
    readonly labourMinorPerHour: number;
    readonly packingMinor: number;
    /** Material cost is multiplied by this, in percent (250 = 2.5 times). */
    readonly materialPercent: number;
    /** Prices are rounded up to a multiple of this. */
    readonly roundToMinor: number;
    /** Prices lie this much above such a multiple, so that £1.00 and £0.95 give £31.95; less than `roundToMinor`. Left out: 0. */
    readonly endingMinor?: number;
    /** What selling one takes off its price: hundredths of a percent of it, and an amount. Left out, as in rules of before it was asked: nothing. */
    readonly fees?: { readonly hundredths: number; readonly eachMinor: number };
    /** May a smaller size cost less than the listed price? */
    readonly smallerCostsLess: boolean;
  };
};
