/** Mass of a strand and of a whole piece, and how sure it is. */
import type { Counts, Design } from '../design.ts';
import type { Placed } from '../expand.ts';
import type { Component } from '../component.ts';
import { lessSure, massOf } from './mass.ts';
import type { Mass } from './mass.ts';
import { tally } from '../tally.ts';

const NOTHING: Mass = { massG: 0, basis: 'weighed' };

const plus = (one: Mass, other: Mass): Mass => ({
  massG: one.massG + other.massG,
  basis: other.massG === 0 ? one.basis : lessSure(one.basis, other.basis),
});

/** Mass of some components together. */
export function massOfAll(components: readonly Component[]): Mass {
  return components.reduce((sum, component) => plus(sum, massOf(component)), NOTHING);
}

/** Mass of one strung sequence, crimps and covers included, wire and findings not. */
export function sequenceMass(sequence: readonly Placed[]): Mass {
  return massOfAll(sequence.map((placed) => placed.component));
}

/** Pendant with the rings that it hangs from; nothing where the design hangs none. */
export function hangingMass(design: Design): Mass {
  if (design.hanging === null) return NOTHING;
  const ids = [design.hanging.pendant, ...design.hanging.rings];
  return massOfAll(ids.map((id) => design.components[id]).filter((component) => component !== undefined));
}

/** Clasp and ring. */
export function closingMass(design: Design): Mass {
  const ids = [design.ends.clasp, design.ends.ring].filter((id) => id !== null);
  return massOfAll(ids.map((id) => design.components[id]).filter((component) => component !== undefined));
}

/** Mass of every component of a piece with these counts, wire left out. */
export function pieceMass(design: Design, counts: Counts): Mass {
  let sum = NOTHING;
  for (const [id, count] of tally(design, counts)) {
    const component = design.components[id];
    if (component === undefined) continue;
    const { massG, basis } = massOf(component);
    sum = plus(sum, { massG: count * massG, basis });
  }
  return sum;
}
