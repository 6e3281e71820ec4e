/**
 * Figures of adult bodies. Lengths are millimetres.
 *
 * Source: C. C. Gordon et al., 2012 Anthropometric Survey of U.S. Army
 * Personnel: Methods and Summary Statistics, NATICK/TR-15/007, December 2014
 * (ANSUR II; public working data sets, 1,986 women and 4,082 men of 17 to 58).
 * Means, spreads and least-squares lines were computed from its rows. They are
 * soldiers: neither children nor the whole public, so every spread here is a
 * lower bound of the public's.
 */

/** A least-squares line through people: `intercept + slope · x`, spread about it `residualSd`. */
export type Line = { readonly intercept: number; readonly slope: number; readonly residualSd: number };

/** Height and neck girth together. */
export type Plane = {
  readonly intercept: number;
  readonly perHeight: number;
  readonly perNeck: number;
  readonly residualSd: number;
};

export type Group = 'female' | 'male' | 'unstated';

/** Neck-base girth from neck girth. `unstated`: women and men pooled, unweighted. */
export const NECK_BASE_FROM_NECK: Readonly<Record<Group, Line>> = {
  female: { intercept: 75.31023, slope: 0.89708, residualSd: 9.44 },
  male: { intercept: 65.42436, slope: 0.92839, residualSd: 9.3 },
  unstated: { intercept: 64.62, slope: 0.9301, residualSd: 9.4 },
};

/** Mean and spread of a measure over the group, and its 5th and 95th percentiles. */
export type Spread = {
  readonly mean: number;
  readonly sd: number;
  readonly p5: number;
  readonly p95: number;
};

export type BodyMeasure =
  | 'heightMm'
  | 'neckGirthMm'
  | 'neckBaseGirthMm'
  | 'wristGirthMm'
  | 'ankleGirthMm'
  | 'chestBreadthMm'
  | 'chestDepthMm'
  | 'shoulderBreadthMm'
  | 'chestGirthMm'
  | 'napeAbovePitMm'
  | 'pitToBustMm'
  | 'pitToNavelMm';

export const ADULTS: Readonly<Record<'female' | 'male', Readonly<Record<BodyMeasure, Spread>>>> = {
  female: {
    heightMm: { mean: 1628.5, sd: 64.2, p5: 1525.0, p95: 1740.0 },
    neckGirthMm: { mean: 329.8, sd: 19.2, p5: 302.0, p95: 363.0 },
    neckBaseGirthMm: { mean: 371.2, sd: 19.7, p5: 340.0, p95: 405.0 },
    wristGirthMm: { mean: 154.8, sd: 7.8, p5: 142.2, p95: 168.0 },
    ankleGirthMm: { mean: 215.7, sd: 14.9, p5: 193.0, p95: 242.0 },
    chestBreadthMm: { mean: 269.3, sd: 18.6, p5: 241.0, p95: 302.0 },
    chestDepthMm: { mean: 247.4, sd: 27.3, p5: 205.0, p95: 295.8 },
    shoulderBreadthMm: { mean: 365.3, sd: 18.3, p5: 335.0, p95: 396.0 },
    chestGirthMm: { mean: 946.9, sd: 82.7, p5: 824.2, p95: 1094.0 },
    napeAbovePitMm: { mean: 66.0, sd: 11.9, p5: 46.2, p95: 85.0 },
    pitToBustMm: { mean: 158.1, sd: 22.0, p5: 123.0, p95: 196.0 },
    pitToNavelMm: { mean: 349.5, sd: 22.3, p5: 315.0, p95: 388.0 },
  },
  male: {
    heightMm: { mean: 1756.2, sd: 68.6, p5: 1648.0, p95: 1870.0 },
    neckGirthMm: { mean: 397.6, sd: 25.8, p5: 360.0, p95: 443.0 },
    neckBaseGirthMm: { mean: 434.6, sd: 25.7, p5: 395.0, p95: 479.0 },
    wristGirthMm: { mean: 175.9, sd: 9.0, p5: 162.0, p95: 191.0 },
    ankleGirthMm: { mean: 229.3, sd: 14.6, p5: 206.0, p95: 254.0 },
    chestBreadthMm: { mean: 289.4, sd: 18.3, p5: 261.0, p95: 320.0 },
    chestDepthMm: { mean: 253.8, sd: 26.2, p5: 211.0, p95: 298.0 },
    shoulderBreadthMm: { mean: 415.7, sd: 19.2, p5: 384.0, p95: 447.0 },
    chestGirthMm: { mean: 1058.7, sd: 87.4, p5: 922.0, p95: 1207.0 },
    napeAbovePitMm: { mean: 78.7, sd: 11.6, p5: 60.0, p95: 98.0 },
    pitToBustMm: { mean: 147.5, sd: 18.0, p5: 118.0, p95: 177.0 },
    pitToNavelMm: { mean: 382.1, sd: 25.9, p5: 342.0, p95: 427.0 },
  },
};

/** Where landmarks lie below or above the pit of the neck, by height, or by height and neck girth. */
export const LANDMARKS: Readonly<
  Record<
    'female' | 'male',
    {
      readonly pitToBustFromHeight: Line;
      readonly pitToBust: Plane;
      readonly pitToNavelFromHeight: Line;
      readonly napeAbovePitFromHeight: Line;
    }
  >
> = {
  female: {
    pitToBustFromHeight: { intercept: 23.3946, slope: 0.08269, residualSd: 21.38 },
    pitToBust: { intercept: -32.34653, perHeight: 0.05626, perNeck: 0.2995, residualSd: 20.66 },
    pitToNavelFromHeight: { intercept: 79.50488, slope: 0.16582, residualSd: 19.65 },
    napeAbovePitFromHeight: { intercept: 3.17462, slope: 0.03857, residualSd: 11.6 },
  },
  male: {
    pitToBustFromHeight: { intercept: -9.41067, slope: 0.08933, residualSd: 16.95 },
    pitToBust: { intercept: -47.15097, perHeight: 0.07903, perNeck: 0.14041, residualSd: 16.57 },
    pitToNavelFromHeight: { intercept: 55.91688, slope: 0.18573, residualSd: 22.61 },
    napeAbovePitFromHeight: { intercept: 23.32852, slope: 0.03153, residualSd: 11.45 },
  },
};

/** People of the survey, by the hand they write with. About one in ten is left-handed. */
export const WRITING_HAND = {
  female: { right: 1773, left: 190, either: 23 },
  male: { right: 3577, left: 466, either: 39 },
} as const;
