/** A strand that hangs from two level points, with or without a weight at its middle. Flat: no body yet. */

export type Hung = {
  /** Catenary parameter: the level pull over the strand's weight per mm. */
  readonly hMm: number;
  /** How far the middle hangs below the two points. */
  readonly sagMm: number;
  /** Pull at the points over the strand's weight per mm; times that weight it is a force. */
  readonly pullMm: number;
  /** Steepness at the middle: sinh of it is half the pendant's weight over the level pull. */
  readonly u0: number;
  /** Steepness at the points. */
  readonly u1: number;
};

/** Spans and lengths beyond these are no strand; within them nothing overflows. */
const LEAST_MM = 1e-3;
const MOST_MM = 1e6;
/** A pendant of this many times the strand's weight hangs it straight, to the last digit that matters. */
const STRAIGHT = 1e9;

/** Halvings of the bracket; 2⁻¹⁰⁰ of any factor is beyond the last bit. */
const MOST_HALVINGS = 120;
/** Doublings of the first guess; the caps above need far fewer. */
const MOST_DOUBLINGS = 200;

/** Half the length that hangs with parameter h. Written as a product, so that a nearly taut strand loses no digits. */
function halfLength(hMm: number, spanMm: number, pendantMm: number): number {
  const u0 = Math.asinh(pendantMm / (2 * hMm));
  const half = spanMm / (4 * hMm);
  return 2 * hMm * Math.cosh(u0 + half) * Math.sinh(half);
}

/** The parameter whose strand is as long as wanted: the length falls as h grows, so the root is unique. */
function solveH(halfMm: number, spanMm: number, pendantMm: number): number {
  let low = spanMm;
  let high = spanMm;
  for (let n = 0; n < MOST_DOUBLINGS && !(halfLength(low, spanMm, pendantMm) >= halfMm); n += 1) low /= 2;
  for (let n = 0; n < MOST_DOUBLINGS && !(halfLength(high, spanMm, pendantMm) <= halfMm); n += 1) high *= 2;
  for (let n = 0; n < MOST_HALVINGS; n += 1) {
    const middle = Math.sqrt(low * high);
    if (middle <= low || middle >= high) break;
    if (halfLength(middle, spanMm, pendantMm) >= halfMm) low = middle;
    else high = middle;
  }
  return Math.sqrt(low * high);
}

/** A weightless strand: two straight lines from the points to the weight. */
function hangStraight(lengthMm: number, spanMm: number): Hung {
  const sagMm = Math.sqrt(lengthMm ** 2 - spanMm ** 2) / 2;
  const u = Math.asinh((2 * sagMm) / spanMm);
  return { hMm: Infinity, sagMm, pullMm: Infinity, u0: u, u1: u };
}

/**
 * Hang `lengthMm` of strand between two level points `spanMm` apart.
 *
 * With q the pendant's weight over the strand's weight per mm:
 * S/2 = h (sinh u1 − sinh u0), sinh u0 = q / 2h, u1 = u0 + w / 2h; the sag is
 * h (cosh u1 − cosh u0) (statics of cables; the catenary with a point load).
 * @param pendantMm q, 0 without pendant, Infinity for a strand that weighs nothing.
 * @returns null where the strand is no longer than the span, or a figure is no measure of a strand (a micrometre to a kilometre).
 */
export function hang(lengthMm: number, spanMm: number, pendantMm: number): Hung | null {
  if (!(spanMm >= LEAST_MM) || !(lengthMm > spanMm) || !(lengthMm <= MOST_MM) || !(pendantMm >= 0))
    return null;
  if (pendantMm > STRAIGHT * lengthMm) return hangStraight(lengthMm, spanMm);
  const hMm = solveH(lengthMm / 2, spanMm, pendantMm);
  const u0 = Math.asinh(pendantMm / (2 * hMm));
  const half = spanMm / (4 * hMm);
  const u1 = u0 + 2 * half;
  return {
    hMm,
    sagMm: 2 * hMm * Math.sinh(u0 + half) * Math.sinh(half),
    pullMm: hMm * Math.cosh(u1),
    u0,
    u1,
  };
}
