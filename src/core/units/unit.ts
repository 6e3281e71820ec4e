/** The units of lengths. */

/** One inch, exact (NIST SP 811 (2008), App. B). */
export const INCH_MM = 25.4;

/** Units that a length may be written in. */
export const LENGTH_UNITS = ['in', 'cm', 'mm'] as const;
export type LengthUnit = (typeof LENGTH_UNITS)[number];

/** Units that a page may be read in. */
export const SHOWN_UNITS = ['in', 'cm'] as const;
export type ShownUnit = (typeof SHOWN_UNITS)[number];

/** True for a unit that a page may be read in; for what comes from a store or an address. */
export function isShownUnit(value: unknown): value is ShownUnit {
  return SHOWN_UNITS.some((unit) => unit === value);
}
