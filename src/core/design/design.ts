/**
 * A design: what a piece is before a size is chosen. Plain data, the same
 * shape from the catalogue, from standard input and in a test.
 */
import type { Component, Wire } from './component.ts';

export const PIECE_KINDS = ['necklace', 'bracelet', 'anklet', 'collar'] as const;
export type PieceKind = (typeof PIECE_KINDS)[number];

/** A focal section stands once, in the middle of a mirrored strand, and never changes. Fillers lie near the clasp and may be 0. */
export const ROLES = ['focal', 'body', 'filler'] as const;

/** How strands lie to each other. Side by side they share one inside girth; nested they hang one below the other. */
export const LIES = ['single', 'side-by-side', 'nested'] as const;

/** One entry of a motif: `count` of one component in a row. */
export type MotifPart = { readonly component: string; readonly count: number };

/**
 * A motif repeated. `usual`, `fewest` and `most` count repeats on ONE side of
 * a mirrored strand, or in the whole of a one-run strand.
 */
export type Section = {
  readonly id: string;
  readonly name: string;
  /** Read from the centre outwards (mirrored), or from clasp to ring (one run). */
  readonly motif: readonly MotifPart[];
  readonly usual: number;
  readonly fewest: number;
  readonly most: number;
  readonly role: (typeof ROLES)[number];
  /** What one repeat more or less costs the design, an integer; the greater, the later it is changed. null: by place, falling from centre to clasp. */
  readonly cost: number | null;
};

export type Strand = {
  readonly id: string;
  /** Centre outwards if mirrored (a focal section, if any, first); else clasp to ring. */
  readonly sections: readonly Section[];
  readonly mirrored: boolean;
};

/** A pendant hung on the wire at the middle of strand 0. */
export type Hanging = {
  readonly pendant: string;
  /** Ring components between wire and pendant, from the wire down; may be empty. */
  readonly rings: readonly string[];
};

/** What stands at each end of every strand. */
export type Ends = {
  readonly clasp: string;
  /** Ring or other component on the far end; null where the clasp has two halves counted as one. */
  readonly ring: string | null;
  readonly crimp: string;
  /** null: the crimp is left bare. */
  readonly cover: string | null;
  /** Length of one wire loop from crimp to bearing point. */
  readonly loopMm: number;
  /** A coil or guard over the wire in the loop: its length is inside `loopMm`, its hole must take the wire. null: none. */
  readonly guard: string | null;
  /** A chain the ring end may be extended by: added range in mm, 0 for none. */
  readonly extenderMm: number;
  /** What one link of that chain adds, its inside length, mm: the whole chain is a whole number of them. Absent: not known, and the chain is let out by any length. */
  readonly linkMm?: number;
};

export type Design = {
  readonly id: string;
  readonly kind: PieceKind;
  readonly strands: readonly Strand[];
  readonly lie: (typeof LIES)[number];
  /** Nested strands: clear gap below the strand inside, mm. */
  readonly nestGapMm: number;
  readonly ends: Ends;
  readonly hanging: Hanging | null;
  /** True where the piece has a better side although it is mirrored and has no pendant (a one-sided focal). */
  readonly oneSided: boolean;
  /** Of a one-sided middle: whether it has a top and a bottom too. Absent: it has, so that designs written without it are sized as ever. */
  readonly upright?: boolean;
  readonly wire: Wire;
  /** Every component named above, by id. */
  readonly components: Readonly<Record<string, Component>>;
};

/** Repeats chosen for every section: `counts[strand][section]`, in the design's own order. */
export type Counts = readonly (readonly number[])[];
