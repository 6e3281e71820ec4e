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

/** Steps of the search. Newton needs about seven; halving alone, where it fails, fewer than this. */
const MOST_STEPS = 200;
/** The root is found when it moves by no more than this share of itself. */
const STILL = 1e-15;
/** Or when the logarithm is right to its own rounding: of a nearly taut strand no more can be known. */
const NOISE = 4e-15;

/**
 * ln of half the length that hangs with steepness x = 1/h, and its slope in x.
 * Half the length is 2h cosh(u0 + w/4h) sinh(w/4h): written as a product, so
 * that a nearly taut strand loses no digits, and as a logarithm, so that a
 * steep one doesn't overflow.
 */
function logHalfLength(x: number, spanMm: number, pendantMm: number): { value: number; slope: number } {
  const half = (spanMm * x) / 4;
  const lift = (pendantMm * x) / 2;
  const mean = Math.asinh(lift) + half;
  const meanSlope = pendantMm / 2 / Math.sqrt(1 + lift ** 2) + spanMm / 4;
  // ln(2 cosh mean) and ln(2 sinh half), their large parts taken out.
  const value =
    mean + Math.log1p(Math.exp(-2 * mean)) + half + Math.log(-Math.expm1(-2 * half)) - Math.log(2 * x);
  return { value, slope: Math.tanh(mean) * meanSlope + spanMm / 4 / Math.tanh(half) - 1 / x };
}

/** The steepness whose strand is as long as wanted: the length rises with it, so the root is unique. */
function solveSteepness(halfMm: number, spanMm: number, pendantMm: number): number {
  const wanted = Math.log(halfMm);
  let low = 0;
  let high = Infinity;
  let x = 1 / spanMm;
  for (let n = 0; n < MOST_STEPS; n += 1) {
    const { value, slope } = logHalfLength(x, spanMm, pendantMm);
    if (value < wanted) low = x;
    else high = x;
    const newton = x + (wanted - value) / slope;
    const kept = newton >= low && newton <= high;
    // Until it has once been too long Newton goes up, and is kept.
    const next = kept ? newton : (low + high) / 2;
    if (Math.abs(next - x) <= STILL * x || Math.abs(wanted - value) <= NOISE) return next;
    x = next;
  }
  return x;
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
  const hMm = 1 / solveSteepness(lengthMm / 2, spanMm, pendantMm);
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
