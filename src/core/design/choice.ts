/**
 * What a buyer chooses, in the core's own units, and the values each part of it
 * may have. Orders in their compact form hold places in these lists: append, never reorder.
 */
import type { PieceKind } from './design.ts';

/** Girths of the body, tape snug and not tight, and the finished length of a necklace. */
export const MEASURES = ['wrist', 'ankle', 'neck', 'length'] as const;
export type MeasureOf = (typeof MEASURES)[number];

export const SITS = ['snug', 'easy', 'loose'] as const;
export type Sit = (typeof SITS)[number];

export const HANDS = ['left', 'right'] as const;
export type Hand = (typeof HANDS)[number];

/** Which piece to take where none meets the tolerance: the one below or above. `best` is the optimum. */
export const PICKS = ['best', 'below', 'above'] as const;
export type Pick = (typeof PICKS)[number];

/** The measures that a kind of piece can be sized by, the usual one first. */
export const MEASURES_OF_KIND: Readonly<Record<PieceKind, readonly [MeasureOf, ...MeasureOf[]]>> = {
  bracelet: ['wrist'],
  anklet: ['ankle'],
  collar: ['neck'],
  // A length first: it is exact, where a length worked out from the neck is an estimate.
  necklace: ['length', 'neck'],
};

export type Measure = { readonly of: MeasureOf; readonly mm: number };

/** What a maker may let a buyer choose instead of what a piece is listed with. */
export const INSTEAD_PARTS = ['clasp', 'pendant'] as const;
export type InsteadPart = (typeof INSTEAD_PARTS)[number];

/** Ids of what is chosen instead; '' for the part that the design is listed with. */
export type ChosenParts = Readonly<Record<InsteadPart, string>>;

export const AS_DESIGNED: ChosenParts = { clasp: '', pendant: '' };

export type Choice = {
  readonly measure: Measure;
  /** Ignored for a finished length. */
  readonly sit: Sit;
  /** The hand that works the clasp. */
  readonly hand: Hand;
  readonly pick: Pick;
  /** Pieces wanted, a whole number from 1. */
  readonly quantity: number;
};

/** Which measure of a piece is brought to the target. */
export type Fitted = 'length' | 'girth';

export const fittedOf = (kind: PieceKind): Fitted => (kind === 'necklace' ? 'length' : 'girth');
