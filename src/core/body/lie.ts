/** Where a necklace lies on a body, and how sure that is. */
import type { AssumptionCode } from './assumptions.ts';
import { CHEST_SLOPE_RAD, NINETY_PERCENT, PIT_DOUBT_MM } from './assumptions.ts';
import type { Figure } from './figure.ts';
import { hang } from './hanging.ts';
import type { Hung } from './hanging.ts';

/** A strand as the body feels it. */
export type Load = {
  /** Finished length. */
  readonly lengthMm: number;
  /** Mass of the strand per mm of it, pendant left out. */
  readonly gPerMm: number;
  /** Mass at the middle, rings and all; 0 without. */
  readonly pendantG: number;
  /** From the wire down to the pendant's middle, rings counted; 0 without. */
  readonly pendantMiddleMm: number;
  /** Across of the strand where it lies on the neck; its middle runs half of it off the skin. */
  readonly acrossMm: number;
};

/** 90 % of people lie between. */
export type Band = { readonly leastMm: number; readonly mostMm: number };

export type Lie =
  /** Shorter than the neck is round: it can't close there. So is a load whose figures are none. */
  | { readonly status: 'too-short'; readonly neckBaseMm: number }
  | {
      /** `on-neck`: shorter than the foot of the neck is round, so it lies above it; else it hangs on the chest. */
      readonly status: 'on-neck' | 'hangs';
      /** Lowest point of the strand's middle line below the pit of the neck, upright; negative above it. */
      readonly dropMm: number;
      readonly dropBand: Band;
      /** The same of the pendant's middle; null without pendant. */
      readonly pendantDropMm: number | null;
      readonly pendantDropBand: Band | null;
      /** Between the points where it leaves the neck. */
      readonly spanMm: number;
      /** Length that hangs in front. */
      readonly frontMm: number;
      readonly sagMm: number;
      /** Sag that lies at the pit: `drop` counts from here. */
      readonly sagAtPitMm: number;
      /** The curve itself, unrolled on the slope. */
      readonly hung: Hung;
      /** Pull at either point, the strand hanging free: on a slope it is less. */
      readonly pullN: number;
      readonly neckBaseMm: number;
      /** Upright drop per mm of sag, above the pit and below it. */
      readonly abovePit: number;
      readonly belowPit: number;
      readonly assumptions: readonly AssumptionCode[];
    };

/** Standard gravity (NIST SP 811). */
const GRAVITY = 9.80665;

const NEWTONS_PER_GRAM = GRAVITY / 1000;

/** Weight of the pendant over the strand's weight per mm; Infinity for a strand that weighs nothing. */
function pendantRatio({ pendantG, gPerMm }: Load): number {
  if (pendantG === 0) return 0;
  return pendantG / gPerMm;
}

/** The strand's middle line round the foot of the neck: half its across off the skin all the way. */
const lineRound = (baseMm: number, acrossMm: number) => baseMm + Math.PI * acrossMm;

/** Every figure of a load is one, and none is below 0. */
const sound = (load: Load) => Object.values(load).every((figure) => Number.isFinite(figure) && figure >= 0);

/**
 * Sag of a strand as long as the neck base is round, over that round: half of
 * it hangs across 1/π of it, whatever the neck, so one curve scaled.
 */
const SAG_AT_PIT = hang(Math.PI / 2, 1, 0)!.sagMm / Math.PI;

type OnNeck = {
  readonly hung: Hung;
  readonly spanMm: number;
  readonly frontMm: number;
  readonly sagAtPitMm: number;
};

/** Flat figures of one strand on a neck base of a given girth; null where it doesn't reach round. */
function hangOn(load: Load, baseMm: number): OnNeck | null {
  if (!sound(load)) return null;
  const round = lineRound(baseMm, load.acrossMm);
  const spanMm = round / Math.PI;
  const frontMm = load.lengthMm - round / 2;
  const hung = hang(frontMm, spanMm, pendantRatio(load));
  return hung === null ? null : { hung, spanMm, frontMm, sagAtPitMm: SAG_AT_PIT * round };
}

/**
 * Upright drop per mm of sag. Below the pit the chest slopes. Above it the foot
 * of the neck leans from the nape to the pit, and the strand's points lie
 * midway, so the pit is half of `napeAbovePit` below them.
 */
function scales(figure: Figure, sagAtPitMm: number) {
  return { abovePit: figure.napeAbovePit.mm / 2 / sagAtPitMm, belowPit: Math.cos(CHEST_SLOPE_RAD) };
}

/** Upright drop below the pit. */
function dropOf({ hung, sagAtPitMm }: OnNeck, figure: Figure): number {
  const { abovePit, belowPit } = scales(figure, sagAtPitMm);
  const beyond = hung.sagMm - sagAtPitMm;
  return beyond * (beyond < 0 ? abovePit : belowPit);
}

/** The same of a load; null where the strand doesn't reach round, or its load isn't sound. */
export function dropMm(load: Load, figure: Figure, baseMm: number): number | null {
  const found = hangOn(load, baseMm);
  return found && dropOf(found, figure);
}

/** Drop over 90 % of people: the spread of the neck base and the doubt about the pit, which are independent. */
function band(load: Load, figure: Figure, drop: number): Band {
  const reach = NINETY_PERCENT * figure.neckBase.sdMm;
  const high = dropMm(load, figure, figure.neckBase.mm + reach);
  // A smaller neck it always reaches round.
  const low = dropMm(load, figure, figure.neckBase.mm - reach) ?? drop;
  // Where the larger neck is more than it reaches round, the strand lies as high as it can.
  const up = high === null ? figure.napeAbovePit.mm / 2 + drop : drop - high;
  const down = low - drop;
  return {
    leastMm: drop - Math.hypot(up, PIT_DOUBT_MM),
    mostMm: drop + Math.hypot(down, PIT_DOUBT_MM),
  };
}

const shift = ({ leastMm, mostMm }: Band, byMm: number): Band => ({
  leastMm: leastMm + byMm,
  mostMm: mostMm + byMm,
});

/**
 * Lay a strand on a body.
 *
 * Half of the neck base lies behind; the rest hangs in front between two points
 * as far apart as the neck base is wide, as a catenary, the pendant a weight at
 * its middle. A catenary keeps its form on a flat slope, so it lies on the
 * chest unrolled. A string round the neck is always the better measure.
 */
export function lieOf(load: Load, figure: Figure): Lie {
  const neckBaseMm = figure.neckBase.mm;
  const found = hangOn(load, neckBaseMm);
  const tooShort = lineRound(figure.neckGirth.mm, load.acrossMm) > load.lengthMm;
  if (found === null || tooShort) return { status: 'too-short', neckBaseMm };
  const drop = dropOf(found, figure);
  const dropBand = band(load, figure, drop);
  const { abovePit, belowPit } = scales(figure, found.sagAtPitMm);
  const hasPendant = load.pendantG > 0 || load.pendantMiddleMm > 0;
  const below = load.pendantMiddleMm * belowPit;
  return {
    ...found,
    status: load.lengthMm < lineRound(neckBaseMm, load.acrossMm) ? 'on-neck' : 'hangs',
    dropMm: drop,
    dropBand,
    pendantDropMm: hasPendant ? drop + below : null,
    pendantDropBand: hasPendant ? shift(dropBand, below) : null,
    sagMm: found.hung.sagMm,
    pullN: pullN(load, found.frontMm, found.hung),
    neckBaseMm,
    abovePit,
    belowPit,
    assumptions: [...figure.assumptions, 'zero-at-pit', 'chest-slope'],
  };
}

/** Pull at one point, newtons. A strand that weighs nothing bears half the pendant, along its line. */
function pullN(load: Load, frontMm: number, hung: Hung): number {
  if (hung.hMm !== Infinity) return hung.pullMm * load.gPerMm * NEWTONS_PER_GRAM;
  return (load.pendantG * NEWTONS_PER_GRAM * frontMm) / (4 * hung.sagMm);
}
