/** The groove of a bead board: straight for a bracelet, bent to a U for a necklace, so that both fit a screen. */
import { arc, joined, line, type Curve } from './curve.ts';

/** Radius of the bend of the innermost groove. */
const BEND_MM = 52;

/** An arm shorter than this would look like a mistake. */
const ARM_LEAST_MM = 20;

export type Groove = {
  readonly curve: Curve;
  /** Where along it zero is: its very middle. */
  readonly zeroMm: number;
  readonly bent: boolean;
};

/**
 * A groove for strands up to `lengthMm`, `outMm` outside (below) the innermost one; zero at (0, outMm).
 */
export function groove(lengthMm: number, outMm: number, bent: boolean): Groove {
  const halfMm = lengthMm / 2;
  if (!bent) {
    return { curve: line(-halfMm, outMm, 0, lengthMm), zeroMm: halfMm, bent: false };
  }
  const radiusMm = BEND_MM + outMm;
  // By the innermost bend, so that all arms end at one height.
  const armMm = Math.max(ARM_LEAST_MM, halfMm - (BEND_MM * Math.PI) / 2);
  const curve = joined([
    line(-radiusMm, -BEND_MM - armMm, Math.PI / 2, armMm),
    arc(0, -BEND_MM, radiusMm, Math.PI, -Math.PI),
    line(radiusMm, -BEND_MM, -Math.PI / 2, armMm),
  ]);
  return { curve, zeroMm: curve.lengthMm / 2, bent: true };
}
