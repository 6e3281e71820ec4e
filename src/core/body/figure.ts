/** The body that a strand is laid on, estimated from what is known of the wearer. */
import type { AssumptionCode } from './assumptions.ts';
import { ADULTS, LANDMARKS } from './data.ts';
import type { BodyMeasure, Spread } from './data.ts';
import { CHILD_NECK_GIRTH_MM } from './dataChildren.ts';
import { neckBase } from './neckBase.ts';
import type { Estimate, Sex } from './neckBase.ts';
import { isChild } from './wearer.ts';
import type { Adult, Child, Wearer } from './wearer.ts';

export type Figure = {
  readonly neckGirth: Estimate;
  readonly neckBase: Estimate;
  /** How far the pit of the neck lies below the nape, upright. */
  readonly napeAbovePit: Estimate;
  /** Below the pit of the neck, upright; null where no survey says. */
  readonly bust: Estimate | null;
  readonly navel: Estimate | null;
  readonly assumptions: readonly AssumptionCode[];
  /** A child wears it: small parts, cords round necks. The page says the cautions. */
  readonly child: boolean;
};

export type FigureProblem =
  | { readonly code: 'under-two'; readonly ageYears: number }
  | { readonly code: 'no-child'; readonly ageYears: number; readonly mostYears: number }
  | {
      readonly code: 'girth-absurd' | 'height-absurd';
      readonly mm: number;
      readonly leastMm: number;
      readonly mostMm: number;
    };

export type FigureResult =
  { readonly ok: true; readonly figure: Figure } | { readonly ok: false; readonly problem: FigureProblem };

/** Necks beyond these are slips of the pen: the smallest child of two has 214 mm, the largest soldier of a hundred 467. */
export const LEAST_NECK_MM = 180;
export const MOST_NECK_MM = 650;
export const LEAST_HEIGHT_MM = 800;
export const MOST_HEIGHT_MM = 2500;

/** Lines of the group. For `unstated` the mean of women's and men's, with the spread of both and of their difference. */
function pooled(female: Estimate, male: Estimate): Estimate {
  const apart = (female.mm - male.mm) / 2;
  return {
    mm: (female.mm + male.mm) / 2,
    sdMm: Math.sqrt((female.sdMm ** 2 + male.sdMm ** 2) / 2 + apart ** 2),
  };
}

function bySex(sex: Sex, of: (group: 'female' | 'male') => Estimate): Estimate {
  return sex === 'unstated' ? pooled(of('female'), of('male')) : of(sex);
}

const spread = ({ mean, sd }: Spread): Estimate => ({ mm: mean, sdMm: sd });

/** Mean of a measure over the group, with its spread. */
export function meanOf(sex: Sex, measure: BodyMeasure): Estimate {
  return bySex(sex, (group) => spread(ADULTS[group][measure]));
}

/** Neck base from a girth that is known, or whose own spread then adds. */
function baseFrom(neckGirth: Estimate, sex: Sex): Estimate {
  const base = neckBase(neckGirth.mm, sex);
  const slope = neckBase(1, sex).mm - neckBase(0, sex).mm;
  return { mm: base.mm, sdMm: Math.hypot(base.sdMm, slope * neckGirth.sdMm) };
}

function bustBelowPit(sex: Sex, heightMm: number | null, neckMm: number | null): Estimate {
  if (heightMm === null) return meanOf(sex, 'pitToBustMm');
  return bySex(sex, (group) => {
    const { pitToBust, pitToBustFromHeight } = LANDMARKS[group];
    if (neckMm === null) {
      const { intercept, slope, residualSd } = pitToBustFromHeight;
      return { mm: intercept + slope * heightMm, sdMm: residualSd };
    }
    const { intercept, perHeight, perNeck, residualSd } = pitToBust;
    return { mm: intercept + perHeight * heightMm + perNeck * neckMm, sdMm: residualSd };
  });
}

function fromHeight(sex: Sex, heightMm: number | null, of: 'pitToNavel' | 'napeAbovePit'): Estimate {
  if (heightMm === null) return meanOf(sex, `${of}Mm`);
  return bySex(sex, (group) => {
    const { intercept, slope, residualSd } = LANDMARKS[group][`${of}FromHeight`];
    return { mm: intercept + slope * heightMm, sdMm: residualSd };
  });
}

function adultFigure({ sex, neckGirthMm, heightMm }: Adult): Figure {
  const neckGirth = neckGirthMm === null ? meanOf(sex, 'neckGirthMm') : { mm: neckGirthMm, sdMm: 0 };
  const assumptions: AssumptionCode[] = [];
  if (sex === 'unstated') assumptions.push('pooled');
  if (neckGirthMm === null) assumptions.push('mean-neck');
  if (heightMm === null) assumptions.push('mean-height');
  return {
    neckGirth,
    neckBase: neckGirthMm === null ? meanOf(sex, 'neckBaseGirthMm') : baseFrom(neckGirth, sex),
    napeAbovePit: fromHeight(sex, heightMm, 'napeAbovePit'),
    bust: bustBelowPit(sex, heightMm, neckGirthMm),
    navel: fromHeight(sex, heightMm, 'pitToNavel'),
    assumptions,
    child: false,
  };
}

/** A child's neck base and nape by adults' proportions, from the neck girth. */
function childFigure(neckGirth: Estimate, known: boolean): Figure {
  const base = baseFrom(neckGirth, 'unstated');
  const adultBase = meanOf('unstated', 'neckBaseGirthMm');
  const adultNape = meanOf('unstated', 'napeAbovePitMm');
  const share = base.mm / adultBase.mm;
  return {
    neckGirth,
    neckBase: base,
    napeAbovePit: { mm: adultNape.mm * share, sdMm: adultNape.sdMm },
    bust: null,
    navel: null,
    assumptions: known ? ['adult-lines'] : ['mean-neck', 'adult-lines'],
    child: true,
  };
}

function ofChild({ ageYears, neckGirthMm }: Child): FigureResult {
  if (!(ageYears >= 2)) return { ok: false, problem: { code: 'under-two', ageYears } };
  // Rows follow one another without a gap.
  const row = CHILD_NECK_GIRTH_MM.find(({ ageTo }) => ageYears < ageTo);
  if (row === undefined) {
    const mostYears = CHILD_NECK_GIRTH_MM.at(-1)?.ageTo ?? 0;
    return { ok: false, problem: { code: 'no-child', ageYears, mostYears } };
  }
  const neckGirth = neckGirthMm === null ? { mm: row.mean, sdMm: row.sd } : { mm: neckGirthMm, sdMm: 0 };
  return { ok: true, figure: childFigure(neckGirth, neckGirthMm !== null) };
}

const within = (mm: number, least: number, most: number) => mm >= least && mm <= most;

/** Estimate the body. Refuses what can't be a body, and any child under two. Never throws. */
export function figureOf(wearer: Wearer): FigureResult {
  const { neckGirthMm } = wearer;
  if (neckGirthMm !== null && !within(neckGirthMm, LEAST_NECK_MM, MOST_NECK_MM)) {
    const problem = {
      code: 'girth-absurd',
      mm: neckGirthMm,
      leastMm: LEAST_NECK_MM,
      mostMm: MOST_NECK_MM,
    } as const;
    return { ok: false, problem };
  }
  if (isChild(wearer)) return ofChild(wearer);
  const { heightMm } = wearer;
  if (heightMm !== null && !within(heightMm, LEAST_HEIGHT_MM, MOST_HEIGHT_MM)) {
    const problem = {
      code: 'height-absurd',
      mm: heightMm,
      leastMm: LEAST_HEIGHT_MM,
      mostMm: MOST_HEIGHT_MM,
    } as const;
    return { ok: false, problem };
  }
  return { ok: true, figure: adultFigure(wearer) };
}
