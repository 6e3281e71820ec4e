/** What no survey gave, as data; every result names those it rests on. */

export type AssumptionCode =
  /** The chest slopes by `CHEST_SLOPE_RAD` below the pit of the neck. */
  | 'chest-slope'
  /** A strand as long as the neck base is round lies with its front at the pit of the neck. */
  | 'zero-at-pit'
  /** Neck girth unknown: the mean of the group stands for it. */
  | 'mean-neck'
  /** Height unknown: the mean of the group stands for it. */
  | 'mean-height'
  /** Sex unstated: women and men pooled. */
  | 'pooled'
  /** Lines fitted to adults stand for a child. */
  | 'adult-lines';

/** From upright. A round figure from memory, not measured; people differ widely. */
export const CHEST_SLOPE_RAD = (20 * Math.PI) / 180;

/**
 * How far a height at the pit may be off whatever the person: two surveys with
 * two definitions put the nape 66 and 78 mm above the pit (ANSUR II, 2012, and
 * the ANSUR of 1988), so about 10 mm.
 */
export const PIT_DOUBT_MM = 10;

/** Standard deviations either side of the mean that hold 90 % of a normal spread. */
export const NINETY_PERCENT = 1.645;
