/** What a material does with light; one file each beside this one. */
import type { Look } from '#core/components/component.ts';

/** A figure is drawn in a box of ±half measures round the component's centre, the hole along x. */
export type FigureBox = {
  readonly halfAlongMm: number;
  readonly halfAcrossMm: number;
};

export type Material = {
  /** The colour at a brightness of 0 (turned away) to 1 (facing the lamp). */
  readonly shade: (look: Look, bright: number) => string;
  /** 1: lit where it faces the lamp. −1: light gathers on the far side, as in clear glass. */
  readonly lit: 1 | -1;
  /** The mirror image of the lamp: how strong (0 to 1) and how large (share of the shape's half measure). */
  readonly gloss: { readonly strength: number; readonly size: number };
  /** Thin line round it that holds it on any ground. */
  readonly edge: (look: Look) => string;
  /** How many differing ones to draw before they repeat; 1 where all are alike. */
  readonly variants: number;
  /** Markings inside the outline; `random` gives the same stream for the same variant. */
  readonly figure: ((look: Look, box: FigureBox, random: () => number) => string) | null;
  /** True where the hole shows through it. */
  readonly clear: boolean;
};
