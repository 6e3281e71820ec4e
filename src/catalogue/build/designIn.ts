/** The design that a piece's own data says, before any check of what it says. */
import type { Component, Wire } from '#core/design/component.ts';
import type { Design } from '#core/design/design.ts';
import { pieceSchema } from '../schemas/piece.ts';
import { buildDesign, strandsOf } from './design.ts';

type Trays = {
  readonly components: Readonly<Record<string, Component>>;
  readonly wires: Readonly<Record<string, Wire>>;
};

/** @returns null where it says none that can be read */
export function designIn(id: string, data: unknown, { components, wires }: Trays): Design | null {
  const read = pieceSchema.safeParse(data);
  if (!read.success) return null;
  const strands = strandsOf(read.data);
  const wire = wires[read.data.wire];
  return strands === null || wire === undefined
    ? null
    : buildDesign(id, read.data, strands, wire, components);
}
