/** Pieces as they are kept: without copies of what they are made of. */
import type { Component, Wire } from '#core/components/component.ts';
import type { Design } from '#core/strand/design.ts';
import type { Piece } from './catalogue.ts';

/** A piece that names its wire and components instead of holding them: a tenth of the size. */
export type StoredPiece = Omit<Piece, 'design'> & {
  readonly design: Omit<Design, 'wire' | 'components'> & {
    readonly wire: string;
    readonly components: readonly string[];
  };
};

export function storePiece(piece: Piece): StoredPiece {
  const { wire, components, ...design } = piece.design;
  return { ...piece, design: { ...design, wire: wire.id, components: Object.keys(components) } };
}

/** The whole piece again. Throws if the store has lost a part, which no reading can bring about. */
export function restorePiece(
  stored: StoredPiece,
  wires: Readonly<Record<string, Wire>>,
  components: Readonly<Record<string, Component>>,
): Piece {
  const wire = wires[stored.design.wire];
  if (wire === undefined) throw new Error(`no wire ${stored.design.wire} for piece ${stored.id}`);
  const parts = stored.design.components.map((id) => {
    const component = components[id];
    if (component === undefined) throw new Error(`no component ${id} for piece ${stored.id}`);
    return [id, component] as const;
  });
  return { ...stored, design: { ...stored.design, wire, components: Object.fromEntries(parts) } };
}
