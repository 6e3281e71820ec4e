/** What closes a strand, where it is not on the strand: wire loops, extender, ring, clasp. */
import type { Component } from '#core/design/component.ts';
import type { Design } from '#core/design/design.ts';
import type { Curve } from './curve.ts';

/** One piece of the closing; x along it, its far bearing points at ±alongMm / 2. */
export type ClosingSpot = {
  readonly kind: 'wire-loop' | 'chain' | 'ring' | 'clasp';
  /** null for what is no component: the wire's own loop, the extender's chain. */
  readonly component: Component | null;
  readonly alongMm: number;
  readonly xMm: number;
  readonly yMm: number;
  /** Direction from its outer end towards the strand, clockwise from rightwards. */
  readonly turnRad: number;
};

export type Piece = Pick<ClosingSpot, 'kind' | 'component' | 'alongMm'>;

/** The clasp end, from its outermost bearing point in to the crimp. */
export function claspEnd(design: Design): Piece[] {
  const clasp = design.components[design.ends.clasp];
  return [...(clasp === undefined ? [] : [pieceOf('clasp', clasp)]), wireLoop(design)];
}

/** The ring end, from its outermost bearing point in to the crimp. */
export function ringEnd(design: Design): Piece[] {
  const ring = design.ends.ring === null ? undefined : design.components[design.ends.ring];
  return [...(ring === undefined ? [] : [pieceOf('ring', ring)]), wireLoop(design)];
}

/** The extender's chain, which hangs from the ring, beyond what the finished length counts. */
export function hangingChain(design: Design): Piece[] {
  const { extenderMm } = design.ends;
  return extenderMm > 0 ? [{ kind: 'chain', component: null, alongMm: extenderMm }] : [];
}

function pieceOf(kind: 'clasp' | 'ring', component: Component): Piece {
  return { kind, component, alongMm: component.alongMm };
}

function wireLoop(design: Design): Piece {
  return { kind: 'wire-loop', component: null, alongMm: design.ends.loopMm };
}

/** Clasp, ring and chain are there once, however many strands they close: with the first. */
export function closingOnce(closing: readonly ClosingSpot[], strand: number): readonly ClosingSpot[] {
  return strand === 0 ? closing : closing.filter(({ kind }) => kind === 'wire-loop');
}

export function lengthOfEnd(pieces: readonly Piece[]): number {
  return pieces.reduce((sum, piece) => sum + piece.alongMm, 0);
}

/** An end laid on a curve, its inner edge `innerMm` along it; `towards` 1 where the strand lies further along. */
export function placeEndAlong(
  pieces: readonly Piece[],
  curve: Curve,
  innerMm: number,
  towards: 1 | -1,
): ClosingSpot[] {
  let edgeMm = innerMm;
  return pieces.toReversed().map((piece) => {
    const point = curve.at(edgeMm - (towards * piece.alongMm) / 2);
    edgeMm -= towards * piece.alongMm;
    return { ...piece, ...point, turnRad: towards === 1 ? point.turnRad : point.turnRad + Math.PI };
  });
}

/** An end laid straight from its outer bearing point at `outerMm`; `towards` 1 where the strand lies to the right. */
export function placeEnd(
  pieces: readonly Piece[],
  outerMm: number,
  yMm: number,
  towards: 1 | -1,
): ClosingSpot[] {
  let edgeMm = outerMm;
  return pieces.map((piece) => {
    const xMm = edgeMm + (towards * piece.alongMm) / 2;
    edgeMm += towards * piece.alongMm;
    return { ...piece, xMm, yMm, turnRad: towards === 1 ? 0 : Math.PI };
  });
}
