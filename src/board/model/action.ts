/**
 * What a hand does at the board. An action says where by itself and holds no more than names and figures, so
 * that a list of them is small, can be kept, and played again on the same design.
 */
import type { Component, Wire } from '#core/design/component.ts';
import type { Design, Ends, Hanging, PieceKind, Section } from '#core/design/design.ts';
import type { Place, Span } from './place.ts';
import type { SentDesign } from './saving.ts';

/** What is in the trays, by id. */
export type Trays = {
  readonly components: Readonly<Record<string, Component>>;
  readonly wires: Readonly<Record<string, Wire>>;
};

export type SectionChange = Partial<Pick<Section, 'name' | 'usual' | 'fewest' | 'most' | 'role' | 'cost'>>;

export type Action =
  // On a strand. `name`: what a section that has to be begun for it is called.
  | {
      readonly type: 'put';
      readonly after: Place;
      readonly component: string;
      readonly count: number;
      readonly name: string;
    }
  /** Into the middle of a mirrored strand, where it stands once. */
  | {
      readonly type: 'middle';
      readonly strand: number;
      readonly component: string;
      readonly count: number;
      readonly name: string;
    }
  /** A section of its own at a place among the sections, whatever lies beside it. */
  | {
      readonly type: 'begin';
      readonly strand: number;
      readonly section: number;
      readonly component: string;
      readonly name: string;
    }
  | { readonly type: 'count'; readonly at: Place; readonly count: number }
  | { readonly type: 'remove'; readonly span: Span }
  | { readonly type: 'replace'; readonly span: Span; readonly component: string }
  | { readonly type: 'move'; readonly span: Span; readonly by: 1 | -1 }
  /** These runs become a section of their own; the same motif following at once is counted with it. */
  | {
      readonly type: 'repeat';
      readonly span: Span;
      readonly name: string;
      /** How often it is to stand; null: as often as it lies there. */
      readonly times: number | null;
    }
  /** A section becomes loose beads. */
  | { readonly type: 'loosen'; readonly strand: number; readonly section: number }
  | {
      readonly type: 'section';
      readonly strand: number;
      readonly section: number;
      readonly change: SectionChange;
    }
  | { readonly type: 'counts'; readonly strand: number; readonly counts: readonly number[] }
  // Strands
  | { readonly type: 'mirrored'; readonly strand: number; readonly mirrored: boolean }
  /** A further strand with the same on it. */
  | { readonly type: 'add-strand'; readonly like: number }
  | { readonly type: 'remove-strand'; readonly strand: number }
  | { readonly type: 'lie'; readonly lie: 'side-by-side' | 'nested'; readonly gapMm: number }
  // The whole piece
  /** All of it as it was once. */
  | { readonly type: 'lay'; readonly design: SentDesign }
  | { readonly type: 'kind'; readonly kind: PieceKind }
  | { readonly type: 'wire'; readonly wire: string }
  | { readonly type: 'ends'; readonly change: Partial<Ends> }
  | { readonly type: 'hanging'; readonly hanging: Hanging | null }
  /** `upright` is null where nothing is said. */
  | { readonly type: 'front'; readonly oneSided: boolean; readonly upright: boolean | null }
  /** One component instead of another wherever it stands. */
  | { readonly type: 'exchange'; readonly from: string; readonly to: string };

/** The design after an action, and what is in hand then; null: what was. */
export type Done = { readonly design: Design; readonly span: Span | null };
