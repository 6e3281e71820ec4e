/** What a piece must be warned of, from what it is made of and how it is worn. Codes only. */
import type { Design } from '#core/design/design.ts';

export type Caution = 'magnet' | 'lead' | 'nickel' | 'sharp' | 'strangling' | 'small-parts';

/** Gravest first. */
const gravity: readonly Caution[] = ['magnet', 'strangling', 'small-parts', 'lead', 'nickel', 'sharp'];

/** Worn round the neck, where it can be caught or pulled tight. */
const roundTheNeck: readonly Design['kind'][] = ['necklace', 'collar'];

/** Cautions of a piece, gravest first. Every strung piece can come apart into small parts. */
export function cautionsOf(design: Design): readonly Caution[] {
  const found = new Set<Caution>(['small-parts']);
  if (roundTheNeck.includes(design.kind)) found.add('strangling');
  for (const component of Object.values(design.components)) {
    for (const caution of component.cautions) found.add(caution);
  }
  return gravestFirst(found);
}

/** Cautions in the order in which anyone should read them, each once. */
export function gravestFirst(cautions: Iterable<Caution>): readonly Caution[] {
  const found = new Set(cautions);
  return gravity.filter((caution) => found.has(caution));
}
