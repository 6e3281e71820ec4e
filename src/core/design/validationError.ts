/** What is wrong with a design that can't be computed or strung: a code for each sentence, with what that sentence names. */
import type { ComponentKind } from './component.ts';

/** What a field holds: `flag` is true or false, `id` a text that isn't empty, `whole` a whole number. */
export type FieldType = 'flag' | 'text' | 'id' | 'number' | 'whole' | 'list' | 'object';

/** What a figure counts; `minor` is the smallest coin of the currency, `none` a plain number. */
export type FigureUnit = 'mm' | 'g' | 'N' | 'g/m' | 'minor' | 'none';

/** Two measures of one component that can't both be true. */
export type MeasureError =
  | { readonly code: 'rounding-too-large'; readonly roundingMm: number; readonly mostMm: number }
  | { readonly code: 'hole-too-wide'; readonly holeMm: number; readonly acrossMm: number };

type Fault =
  // The shape of a design: a field is missing, of another type or beyond its range.
  | { readonly code: 'wrong-type'; readonly wanted: FieldType }
  | { readonly code: 'not-one-of'; readonly options: readonly string[] }
  | { readonly code: 'text-too-long'; readonly length: number; readonly most: number }
  | {
      readonly code: 'out-of-range';
      readonly value: number;
      readonly least: number;
      readonly most: number;
      readonly unit: FigureUnit;
    }
  | { readonly code: 'too-many-entries'; readonly count: number; readonly most: number }
  /** A component's own id isn't the one it is listed under. */
  | { readonly code: 'id-differs'; readonly component: string; readonly key: string }
  // Figures of one component that can't be true together.
  | { readonly code: 'no-length'; readonly component: string }
  | { readonly code: 'no-width'; readonly component: string }
  | (MeasureError & { readonly component: string })
  | { readonly code: 'unknown-material'; readonly component: string; readonly material: string }
  // Names.
  | { readonly code: 'unknown-component'; readonly component: string }
  | {
      readonly code: 'wrong-kind';
      readonly component: string;
      readonly kind: ComponentKind;
      /** What may stand there. */
      readonly kinds: readonly ComponentKind[];
    }
  // Counts.
  | { readonly code: 'no-strand' }
  | { readonly code: 'strand-empty' }
  /** Components on the strand at its most. */
  | {
      readonly code: 'strand-too-long';
      readonly count: number;
      readonly most: number;
    }
  | { readonly code: 'section-twice'; readonly section: string }
  | { readonly code: 'section-empty'; readonly section: string }
  | {
      readonly code: 'counts-order';
      readonly section: string;
      readonly fewest: number;
      readonly usual: number;
      readonly most: number;
    }
  | {
      readonly code: 'focal-changes';
      readonly section: string;
      readonly fewest: number;
      readonly most: number;
    }
  | { readonly code: 'focal-not-once'; readonly section: string; readonly usual: number }
  | { readonly code: 'focal-not-first'; readonly section: string }
  /** Several strands that lie as a single one does. */
  | { readonly code: 'lie-single'; readonly strands: number }
  | { readonly code: 'ways'; readonly clasp: string; readonly ways: number; readonly strands: number }
  // The extender chain.
  | { readonly code: 'link-without-chain'; readonly linkMm: number }
  /** It doesn't hold one link. */
  | { readonly code: 'chain-too-short'; readonly chainMm: number; readonly linkMm: number }
  /** It is no whole number of links; it holds `links` whole ones. */
  | {
      readonly code: 'chain-not-whole';
      readonly chainMm: number;
      readonly linkMm: number;
      readonly links: number;
    }
  // Holes, crimps, covers, rings.
  | {
      readonly code: 'hole-too-small';
      readonly component: string;
      readonly holeMm: number;
      readonly needMm: number;
      readonly wire: string;
    }
  | {
      readonly code: 'crimp-too-tight';
      readonly crimp: string;
      readonly insideMm: number;
      /** For the wire doubled. */
      readonly needMm: number;
      readonly wire: string;
    }
  | {
      readonly code: 'cover-too-tight';
      readonly cover: string;
      readonly takesMm: number;
      readonly crimp: string;
      readonly closedMm: number;
    }
  /** A closed ring, and nothing to open where it is to take what hangs on it. */
  | { readonly code: 'ring-closed'; readonly ring: string; readonly hangs: string };

export type ValidationError = Fault & {
  /** Path within the design, e.g. `strands.0.sections.2`; empty for the whole. */
  readonly at: string;
};
