/** Pieces as they are kept: without copies of what they are made of. */
import type { Alternatives } from '#core/design/alternatives.ts';
import type { Component, Wire } from '#core/design/component.ts';
import type { Design } from '#core/design/design.ts';
import type { Supply } from './supply.ts';
import { allComponents, wireKey, type Catalogue, type Labels, type Piece } from './catalogue.ts';

/** Its labels beside it; null where there is none. */
type Labelled = {
  readonly germanName: string | null;
  readonly partNumber: string | null;
  readonly tray: string | null;
  readonly supply: Supply | null;
};
export type StoredComponent = Component & Labelled;
export type StoredWire = Wire & Labelled;

/** A piece that names its wire and components instead of holding them: a tenth of the size. */
export type StoredPiece = Omit<Piece, 'design' | 'alternatives' | keyof Labels> & {
  readonly design: Omit<Design, 'wire' | 'components'> & {
    readonly wire: string;
    readonly components: readonly string[];
  };
  readonly alternatives: {
    readonly clasps: readonly { readonly clasp: string; readonly ring: string | null }[];
    readonly pendants: readonly string[];
  };
};

/** The labels of a piece's own wire and components, out of all. */
export function labelsFor(
  piece: Pick<Piece, 'design' | 'alternatives'>,
  { germanNames, partNumbers }: Labels,
): Labels {
  const ids = [wireKey(piece.design.wire.id), ...Object.keys(allComponents(piece))];
  const own = (all: Readonly<Record<string, string>>): Readonly<Record<string, string>> =>
    Object.fromEntries(
      ids.flatMap((id) => {
        const label = all[id];
        return label === undefined ? [] : [[id, label] as const];
      }),
    );
  return { germanNames: own(germanNames), partNumbers: own(partNumbers) };
}

/** Labels as they are kept, one of each beside its component or wire. */
export const labelsOf = (
  key: string,
  { germanNames, partNumbers, trays, supplies }: Labels & Pick<Catalogue, 'trays' | 'supplies'>,
): Labelled => ({
  germanName: germanNames[key] ?? null,
  partNumber: partNumbers[key] ?? null,
  tray: trays[key] ?? null,
  supply: supplies[key] ?? null,
});

export function storePiece({ germanNames: _names, partNumbers: _numbers, ...piece }: Piece): StoredPiece {
  const { wire, components, ...design } = piece.design;
  const { clasps, pendants } = piece.alternatives;
  const alternatives = {
    clasps: clasps.map(({ clasp, ring }) => ({ clasp: clasp.id, ring: ring?.id ?? null })),
    pendants: pendants.map(({ id }) => id),
  };
  return {
    ...piece,
    alternatives,
    design: { ...design, wire: wire.id, components: Object.keys(components) },
  };
}

/** The whole piece again. Throws if the store has lost a part, which no reading can bring about. */
export function restorePiece(
  stored: StoredPiece,
  wires: Readonly<Record<string, Wire>>,
  components: Readonly<Record<string, Component>>,
  labels: Labels,
): Piece {
  const wire = wires[stored.design.wire];
  if (wire === undefined) throw new Error(`no wire ${stored.design.wire} for piece ${stored.id}`);
  const part = (id: string): Component => {
    const component = components[id];
    if (component === undefined) throw new Error(`no component ${id} for piece ${stored.id}`);
    return component;
  };
  const parts = stored.design.components.map((id) => [id, part(id)] as const);
  const { clasps, pendants } = stored.alternatives;
  const alternatives: Alternatives = {
    clasps: clasps.map(({ clasp, ring }) => ({
      clasp: part(clasp),
      ring: ring === null ? null : part(ring),
    })),
    pendants: pendants.map(part),
  };
  const design = { ...stored.design, wire, components: Object.fromEntries(parts) };
  return { ...stored, design, alternatives, ...labelsFor({ design, alternatives }, labels) };
}
