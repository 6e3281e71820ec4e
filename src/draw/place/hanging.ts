/** The curve of a strand that hangs free between two points at one height, with or without a pendant. */
import { runningOn, type Curve, type CurvePoint } from './curve.ts';

/** Doublings of a bracket and halvings inside it: enough for the last bit of a double. */
const HALVINGS = 80;

/**
 * Scale h (mm) of the catenary `y = h·cosh(x/h)` of that length between points that far apart,
 * with a weight at its middle of `pendantRatioMm` times the strand's weight a millimetre.
 * `S/2 = h·(sinh u1 − sinh u0)`, `sinh u0 = q/(2h)`, `u1 = u0 + w/(2h)`: the textbook catenary with a point load.
 * Needs `lengthMm > spanMm`.
 */
export function catenaryScale(lengthMm: number, spanMm: number, pendantRatioMm: number): number {
  if (!(lengthMm > spanMm) || !(spanMm > 0)) {
    throw new RangeError(
      `got length ${lengthMm} over span ${spanMm}, expected a strand longer than its span`,
    );
  }
  const lengthAt = (h: number): number => {
    const start = Math.asinh(pendantRatioMm / (2 * h));
    return 2 * h * (Math.sinh(start + spanMm / (2 * h)) - Math.sinh(start));
  };
  // The length falls as h grows. Below span/1400 sinh would overflow.
  let low = spanMm / 1400;
  let high = spanMm;
  for (let at = 0; at < HALVINGS && lengthAt(high) > lengthMm; at += 1) high *= 2;
  for (let at = 0; at < HALVINGS; at += 1) {
    const middle = (low + high) / 2;
    if (lengthAt(middle) > lengthMm) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/**
 * The curve from its left end, down and up again to the right end; its ends lie at (∓span/2, 0), y down.
 */
export function hanging(lengthMm: number, spanMm: number, pendantRatioMm: number): Curve {
  const h = catenaryScale(lengthMm, spanMm, pendantRatioMm);
  const sinhStart = pendantRatioMm / (2 * h);
  const start = Math.asinh(sinhStart);
  const topMm = h * Math.cosh(start + spanMm / (2 * h));
  const within = (sMm: number): CurvePoint => {
    const fromMiddleMm = sMm - lengthMm / 2;
    const sinhU = Math.abs(fromMiddleMm) / h + sinhStart;
    const u = Math.asinh(sinhU);
    const side = fromMiddleMm < 0 ? -1 : 1;
    return {
      xMm: side * h * (u - start),
      yMm: topMm - h * Math.cosh(u),
      // The slope of a catenary is sinh u: upwards to the right, so y falls.
      turnRad: Math.atan2(-side * sinhU, 1),
    };
  };
  return { lengthMm, at: (sMm) => runningOn(within, lengthMm, sMm) };
}
