/**
 * How far apart two neighbours are that touch.
 *
 * Seen from the side a part is a rectangle `along × across` with corners
 * rounded by c. Where the hole axes of two neighbours meet at a turn t, each
 * axis makes t/2 with the line through both centres, and the parts lie
 * symmetrically on either side of the plane that halves the turn:
 *
 *            ╭───────╮ │ ╭───────╮         from the centre, how far a rounded
 *            │   ●───┼─┼─┼───●   │         rectangle comes in a direction that
 *            ╰───────╯╲│╱╰───────╯         makes t/2 with its axis (its support
 *               ╱   rim touches  ╲         function):
 *         hole axis    │    hole axis
 *                      │ plane             (along/2 − c)·cos(t/2)
 *                 ▼ towards the axis       + (across/2 − c)·sin(t/2) + c
 *                   of the cylinder
 *
 * The distance is the sum of two of these, one for each part; only that a wider
 * part's rim stands past the narrower's, which turns on its face, so that the
 * smaller rim counts for both:
 *
 *     d(t) = straight·cos(t/2) + rim·sin(t/2) + round
 *     straight = along1/2 − c1 + along2/2 − c2
 *     rim      = 2·min(across1/2 − c1, across2/2 − c2)
 *     round    = c1 + c2
 *
 * Balls have no flat (straight = rim = 0), so they keep their distance at any
 * turn; sharp tubes open on their rims as they turn. d is concave in t, since
 * both cosine and sine are up to π/2.
 */
import type { Part } from './part.ts';

/** Outlines that parts share, one entry a kind, mm. */
export type Outlines = {
  readonly halfAlong: Float64Array;
  readonly halfAcross: Float64Array;
  readonly rounding: Float64Array;
};

/** What the distance at each of many junctions is made of, mm. */
export type Junctions = {
  readonly straight: Float64Array;
  readonly rim: Float64Array;
  readonly round: Float64Array;
};

/** Rounding as the outline allows it, so that a careless figure can't turn a part inside out. */
function roundingOf(part: Part): number {
  return Math.max(0, Math.min(part.roundingMm, part.alongMm / 2, part.acrossMm / 2));
}

export function outlinesOf(parts: readonly Part[]): Outlines {
  return {
    halfAlong: Float64Array.from(parts, (part) => part.alongMm / 2),
    halfAcross: Float64Array.from(parts, (part) => part.acrossMm / 2),
    rounding: Float64Array.from(parts, roundingOf),
  };
}

/** Notes at a place of `into` how far apart two kinds keep as neighbours. */
export function setJunction(
  into: Junctions,
  at: number,
  { halfAlong, halfAcross, rounding }: Outlines,
  one: number,
  other: number,
): void {
  const cOne = rounding[one]!;
  const cOther = rounding[other]!;
  into.straight[at] = halfAlong[one]! - cOne + halfAlong[other]! - cOther;
  into.rim[at] = 2 * Math.min(halfAcross[one]! - cOne, halfAcross[other]! - cOther);
  into.round[at] = cOne + cOther;
}

/** Distance of two neighbours that turn by `turnRad`, mm. */
export function distanceAt({ straight, rim, round }: Junctions, at: number, turnRad: number): number {
  return straight[at]! * Math.cos(turnRad / 2) + rim[at]! * Math.sin(turnRad / 2) + round[at]!;
}

/** The turn at which a distance, less `perRad` for every radian of it, is greatest. */
export function farthestTurn({ straight, rim }: Junctions, at: number, perRad: number): number {
  const s = straight[at]!;
  const r = rim[at]!;
  if (perRad >= r / 2) return 0;
  // ½·√(s² + r²)·sin(atan2(r, s) − t/2) is the slope.
  return 2 * (Math.atan2(r, s) - Math.asin((2 * perRad) / Math.hypot(s, r)));
}
