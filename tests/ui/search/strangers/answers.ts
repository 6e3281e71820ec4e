/** What a right answer to a stranger's words is told by. */
import type { Measure } from '#core/design/choice.ts';
import type { ColourFamily } from '#catalogue/facts/colour.ts';
import type { PieceKind } from '#core/design/design.ts';
import type { Shape } from '#core/design/component.ts';
import { INCH_MM } from '#core/units/unit.ts';

/** What a right answer is told by. */
export type Facts = {
  readonly id: string;
  readonly kind: PieceKind;
  readonly status: 'available' | 'to-order' | 'past';
  readonly year: number;
  /** Whole pounds; null for what can't be had any more. */
  readonly price: number | null;
  readonly materials: readonly string[];
  readonly colours: readonly ColourFamily[];
  readonly closing: Shape;
  /** What its clasp is of. */
  readonly claspOf: string;
  readonly strands: number;
  readonly pendant: boolean;
  readonly extender: boolean;
  readonly nickel: boolean;
  /** True where it can be made to a measure between both, mm. */
  readonly isMade: (of: Measure['of'], leastMm: number, mostMm: number) => boolean;
};

export type Test = (piece: Facts) => boolean;

/** Any one of several answers to the same words may be right. */
export type Answer = {
  /** Those pieces, and no others. */
  readonly exactly?: Test;
  /** Some of those pieces, and no others. */
  readonly within?: Test;
  /** Ids that must be among them. */
  readonly has?: readonly string[];
  readonly most?: number;
  /** Most of the shop is a right answer. */
  readonly many?: true;
  /** Nothing; what comes nearest, if anything, is of those. */
  readonly nothing?: true | Test;
  /** Among marks and notes. */
  readonly shown?: RegExp;
};

export type Asked = readonly [words: string, ...answers: Answer[]];

export const necklace: Test = ({ kind }) => kind === 'necklace';
export const bracelet: Test = ({ kind }) => kind === 'bracelet';
export const anklet: Test = ({ kind }) => kind === 'anklet';
export const collar: Test = ({ kind }) => kind === 'collar';
export const and =
  (...tests: readonly Test[]): Test =>
  (piece) =>
    tests.every((test) => test(piece));
export const or =
  (...tests: readonly Test[]): Test =>
  (piece) =>
    tests.some((test) => test(piece));
export const not =
  (test: Test): Test =>
  (piece) =>
    !test(piece);
export const of =
  (...materials: readonly string[]): Test =>
  (piece) =>
    materials.some((one) => piece.materials.includes(one));
export const shows =
  (...colours: readonly ColourFamily[]): Test =>
  (piece) =>
    colours.some((one) => piece.colours.includes(one));
export const closes =
  (shape: Shape): Test =>
  ({ closing }) =>
    closing === shape;
export const strands =
  (count: number): Test =>
  (piece) =>
    piece.strands === count;
export const cost =
  (least: number, most: number): Test =>
  ({ price }) =>
    price !== null && price >= least && price <= most;
export const named =
  (...ids: readonly string[]): Test =>
  ({ id }) =>
    ids.includes(id);
export const fits =
  (of: Measure['of'], leastMm: number, mostMm = leastMm): Test =>
  ({ isMade }) =>
    isMade(of, leastMm, mostMm);
export const inches = (count: number): number => count * INCH_MM;
export const several: Test = (piece) => piece.strands > 1;
export const ready: Test = ({ status }) => status === 'available';
export const past: Test = ({ status }) => status === 'past';
export const pendant: Test = (piece) => piece.pendant;
export const extender: Test = (piece) => piece.extender;
export const nickelFree: Test = ({ nickel }) => !nickel;

export const WOODS = ['walnut', 'boxwood', 'olive-wood', 'beech', 'ebony'];
export const METALS = ['silver', 'brass', 'copper', 'steel', 'pewter', 'hematite'];
export const silver = or(of('silver'), shows('silver'), ({ claspOf }) => claspOf === 'silver');
export const nothing: Answer = { nothing: true };
/** A name: that piece, and hardly another that has the same words. */
export const byName = (id: string): Answer => ({ within: () => true, has: [id], most: 3 });
