/** How wide a round hole must be for several equal wires. */

/**
 * Diameter of the smallest circle round n equal circles, in their diameters,
 * n = 1…13. Source: circle packing in a circle (Graham 1968, Pirl 1969,
 * Melissen 1994, Fodor 2000 and 2003; closed forms where known).
 */
const ENCLOSING: readonly number[] = [
  1,
  2,
  1 + 2 / Math.sqrt(3),
  1 + Math.SQRT2,
  1 + Math.sqrt(2 * (1 + 1 / Math.sqrt(5))),
  3,
  3,
  1 + 1 / Math.sin(Math.PI / 7),
  1 + Math.sqrt(2 * (2 + Math.SQRT2)),
  3.8130256313981246,
  1 + 1 / Math.sin(Math.PI / 9),
  4.029601930116184,
  2 + Math.sqrt(5),
];

/** The most wires the table knows; far more than go through any crimp. */
export const MOST_WIRES = ENCLOSING.length;

/**
 * Diameter of the smallest round hole that takes `wires` wires of one
 * diameter side by side, in mm; null above `MOST_WIRES` or below one wire.
 */
export function holeForWiresMm(wires: number, wireMm: number): number | null {
  const ratio = Number.isInteger(wires) ? ENCLOSING[wires - 1] : undefined;
  return ratio === undefined ? null : ratio * wireMm;
}

/**
 * Lengths that differ by less are the same: half a thousandth of a millimetre,
 * under any drill's or gauge's error, over every rounding of inches to mm.
 */
const SAME_MM = 0.0005;

/** True where a hole takes what needs `needMm`. */
export const takes = (holeMm: number, needMm: number): boolean => holeMm >= needMm - SAME_MM;
