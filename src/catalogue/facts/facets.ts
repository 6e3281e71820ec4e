/** What a piece is found by: its materials, colours, closing and year. Codes only. */
import type { Component, Shape } from '#core/design/component.ts';
import { tallyStrand } from '#core/design/tally.ts';
import { usual } from '#core/sizing/usual.ts';
import type { Design, PieceKind } from '#core/design/design.ts';
import type { Piece, Status } from '../model/catalogue.ts';
import { familyOf, type ColourFamily } from './colour.ts';

/** One component as a share of what is seen of a piece. */
export type Share = { readonly component: Component; readonly count: number; readonly share: number };

export type Facets = {
  readonly kind: PieceKind;
  readonly status: Status;
  readonly year: number;
  readonly priceMinor: number;
  /** Materials of what is strung and hung, most seen first. */
  readonly materials: readonly string[];
  /** Colour families, most seen first. */
  readonly colours: readonly ColourFamily[];
  /** Shape of the clasp. */
  readonly closing: Shape;
  readonly strands: number;
};

// A colour below an eighth of what is seen isn't what anyone would call the piece.
const leastColourShare = 1 / 8;

/** How often each strung component stands in the piece as listed, and the pendant once. */
function counted(design: Design): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  usual(design).forEach((repeats, index) => {
    const strand = design.strands[index];
    if (strand === undefined) return;
    for (const [id, count] of tallyStrand(strand, repeats)) counts.set(id, (counts.get(id) ?? 0) + count);
  });
  if (design.hanging !== null) counts.set(design.hanging.pendant, 1);
  return counts;
}

/** Area seen from the front. */
function areaMm2(component: Component): number {
  return Math.max(component.alongMm, component.hangMm) * component.acrossMm;
}

/** What the piece is made of as listed, most seen first; closing, crimps and covers left out. */
export function sharesOf(design: Design): readonly Share[] {
  const seen = [...counted(design)].flatMap(([id, count]) => {
    const component = design.components[id];
    return component === undefined ? [] : [{ component, count, area: count * areaMm2(component) }];
  });
  const whole = seen.reduce((sum, { area }) => sum + area, 0) || 1;
  return seen
    .map(({ component, count, area }) => ({ component, count, share: area / whole }))
    .sort((one, other) => other.share - one.share || (one.component.id < other.component.id ? -1 : 1));
}

/** Adds the shares that have a key in common; greatest first. */
function grouped<Key>(shares: readonly Share[], keyOf: (component: Component) => Key): [Key, number][] {
  const sums = new Map<Key, number>();
  for (const { component, share } of shares) {
    const key = keyOf(component);
    sums.set(key, (sums.get(key) ?? 0) + share);
  }
  return [...sums].sort((one, other) => other[1] - one[1]);
}

export function facetsOf(piece: Piece): Facets {
  const { design } = piece;
  const shares = sharesOf(design);
  const colours = grouped(shares, ({ look }) => familyOf(look));
  return {
    kind: design.kind,
    status: piece.status,
    year: Number(piece.made.slice(0, 4)),
    priceMinor: piece.listedMinor,
    materials: grouped(shares, ({ material }) => material).map(([material]) => material),
    colours: colours
      .filter(([, share], place) => place === 0 || share >= leastColourShare)
      .map(([family]) => family),
    closing: design.components[design.ends.clasp]?.shape ?? 'hook',
    strands: design.strands.length,
  };
}

/** All that is strung or hung, most seen first, then the clasp. */
export function lookedFor(design: Design): readonly Component[] {
  const clasp = design.components[design.ends.clasp];
  return [...sharesOf(design).map(({ component }) => component), ...(clasp === undefined ? [] : [clasp])];
}
