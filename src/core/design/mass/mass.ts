/** What a component weighs, and how that is known. */
import type { Component, Wire } from '../component.ts';
import { densityOf, UNKNOWN_DENSITY_G_PER_CM3 } from './density.ts';
import { isRough, volumeMm3 } from './volume.ts';

/**
 * `weighed` by the maker; `volume` from outline and handbook density, good to
 * some percent; `rough` where shape or material is guessed.
 */
export type MassBasis = 'weighed' | 'volume' | 'rough';

export type Mass = { readonly massG: number; readonly basis: MassBasis };

const MM3_PER_CM3 = 1000;

/** Mass of one component in grams. The maker's own weighing wins. */
export function massOf(component: Component): Mass {
  if (component.massG !== null) return { massG: component.massG, basis: 'weighed' };
  const density = densityOf(component.material);
  const massG = (volumeMm3(component) / MM3_PER_CM3) * (density ?? UNKNOWN_DENSITY_G_PER_CM3);
  return { massG, basis: density === null || isRough(component.shape) ? 'rough' : 'volume' };
}

/** Mass of a length of wire in grams. */
export function wireMassG(wire: Wire, lengthMm: number): number {
  return (wire.massGPerM * lengthMm) / 1000;
}

/** The less sure of two bases. */
export function lessSure(one: MassBasis, other: MassBasis): MassBasis {
  const order: readonly MassBasis[] = ['weighed', 'volume', 'rough'];
  return order[Math.max(order.indexOf(one), order.indexOf(other))] ?? 'rough';
}
