/** Mass of a strand and of a whole piece, and how sure it is. */
import type { Design } from '../strand/design.ts';
import type { Placed } from '../strand/expand.ts';
import type { Component } from './component.ts';
import { lessSure, massOf, wireMassG } from './mass.ts';
import type { Mass } from './mass.ts';

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

/**
 * Mass of the whole piece as worn, wire included.
 * @param sequences every strand as `expand` gives it; `wireMm` the wire left in the piece.
 */
export function pieceMass(design: Design, sequences: readonly (readonly Placed[])[], wireMm: number): Mass {
  const strands = sequences.map(sequenceMass);
  const all = [...strands, hangingMass(design), closingMass(design)].reduce(plus, NOTHING);
  return { massG: all.massG + wireMassG(design.wire, wireMm), basis: all.basis };
}
