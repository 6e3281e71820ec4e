/** The curve of a strand that hangs free, as core has solved it. */
import type { Hung } from '#core/body/hanging.ts';
import { runningOn, type Curve, type CurvePoint } from './curve.ts';

/**
 * The curve from its left end, down and up again to the right end; its ends lie at (∓span/2, 0), y down.
 * @param lengthMm length between the two points, as given to core's `hang`
 */
export function hanging(hung: Hung, lengthMm: number): Curve {
  const shape = hung.hMm === Infinity ? straightSides(hung) : catenary(hung);
  const within = (sMm: number): CurvePoint => shape(sMm - lengthMm / 2);
  return { lengthMm, at: (sMm) => runningOn(within, lengthMm, sMm) };
}

/** Two straight lines down to the weight: a strand that weighs nothing. */
function straightSides({ sagMm, u0 }: Hung): (fromMiddleMm: number) => CurvePoint {
  const turnRad = Math.atan(Math.sinh(u0));
  return (fromMiddleMm) => ({
    xMm: fromMiddleMm * Math.cos(turnRad),
    yMm: sagMm - Math.abs(fromMiddleMm) * Math.sin(turnRad),
    turnRad: fromMiddleMm < 0 ? turnRad : -turnRad,
  });
}

/** Arc length from the middle is `h (sinh u − sinh u0)`, so the point is found without searching. */
function catenary({ hMm, sagMm, u0 }: Hung): (fromMiddleMm: number) => CurvePoint {
  return (fromMiddleMm) => {
    const sinhU = Math.abs(fromMiddleMm) / hMm + Math.sinh(u0);
    const u = Math.asinh(sinhU);
    const side = fromMiddleMm < 0 ? -1 : 1;
    // cosh u − cosh u0 as a product: a nearly taut strand loses no digits.
    const riseMm = 2 * hMm * Math.sinh((u + u0) / 2) * Math.sinh((u - u0) / 2);
    return {
      xMm: side * hMm * (u - u0),
      yMm: sagMm - riseMm,
      // The slope of a catenary is sinh u; y runs down.
      turnRad: Math.atan2(-side * sinhU, 1),
    };
  };
}
