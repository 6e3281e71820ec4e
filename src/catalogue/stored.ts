/** Pieces as they are kept: without copies of what they are made of. */
import type { Component, Wire } from '#core/components/component.ts';
import type { Design } from '#core/strand/design.ts';
import { wireKey, type Piece } from './catalogue.ts';

/** A component with its German name beside it; null where there is none. */
export type StoredComponent = Component & { readonly germanName: string | null };

/** A wire with its German name beside it; null where there is none. */
export type StoredWire = Wire & { readonly germanName: string | null };

/** A piece that names its wire and components instead of holding them: a tenth of the size. */
export type StoredPiece = Omit<Piece, 'design' | 'germanNames'> & {
  readonly design: Omit<Design, 'wire' | 'components'> & {
    readonly wire: string;
    readonly components: readonly string[];
  };
};

/** The names that a design's own wire and components have, out of all. */
export function namesFor(
  design: Pick<Design, 'components' | 'wire'>,
  names: Readonly<Record<string, string>>,
): Readonly<Record<string, string>> {
  return Object.fromEntries(
    [wireKey(design.wire.id), ...Object.keys(design.components)].flatMap((id) => {
      const name = names[id];
      return name === undefined ? [] : [[id, name] as const];
    }),
  );
}

export function storePiece({ germanNames: _names, ...piece }: Piece): StoredPiece {
  const { wire, components, ...design } = piece.design;
  return { ...piece, design: { ...design, wire: wire.id, components: Object.keys(components) } };
}

/** The whole piece again. Throws if the store has lost a part, which no reading can bring about. */
export function restorePiece(
  stored: StoredPiece,
  wires: Readonly<Record<string, Wire>>,
  components: Readonly<Record<string, Component>>,
  germanNames: Readonly<Record<string, string>>,
): Piece {
  const wire = wires[stored.design.wire];
  if (wire === undefined) throw new Error(`no wire ${stored.design.wire} for piece ${stored.id}`);
  const parts = stored.design.components.map((id) => {
    const component = components[id];
    if (component === undefined) throw new Error(`no component ${id} for piece ${stored.id}`);
    return [id, component] as const;
  });
  const design = { ...stored.design, wire, components: Object.fromEntries(parts) };
  return { ...stored, design, germanNames: namesFor(design, germanNames) };
}
