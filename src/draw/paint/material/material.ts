/** What a material does with light; one file each beside this one. */
import type { Look } from '#core/design/component.ts';
import type { Ink } from '../ink/ink.ts';

/** A figure is drawn in a box of ±half measures round the component's centre, the hole along x. */
export type FigureBox = {
  readonly halfAlongMm: number;
  readonly halfAcrossMm: number;
};

/** A colour that may let what lies under it through: 1 hides it. */
export type Tint = { readonly colour: string; readonly opacity: number };

export type Material = {
  /** What is seen at a brightness of 0 (turned away) to 1 (facing the lamp); a veil where there is a figure. */
  readonly shade: (look: Look, bright: number) => Tint;
  /** 1: lit where it faces the lamp. −1: light gathers on the far side, as in clear glass. */
  readonly lit: 1 | -1;
  /** Light thrown back on the far rim, added to its brightness. */
  readonly bounce: number;
  /** The mirror image of the lamp: a soft sheen and a hard point, 0 to 1 each. */
  readonly gloss: { readonly sheen: number; readonly point: number };
  /** Thin line round it that holds it on any ground. */
  readonly edge: (look: Look) => string;
  /** How many differing ones to draw before they repeat; 1 where all are alike. */
  readonly variants: number;
  /** Markings on the plain colour, under the veil of light; `random` gives the same stream for the same variant. */
  readonly figure: ((look: Look, box: FigureBox, random: () => number, ink: Ink) => string) | null;
  /** True where the hole shows through it. */
  readonly clear: boolean;
};

/** A colour that hides what is under it. */
export function solidTint(colour: string): Tint {
  return { colour, opacity: 1 };
}

/** Brightness at which a veil lets the plain colour through untouched. */
const PLAIN_AT = 0.6;

/**
 * Shade and light laid over a figure.
 * @param dark, light how strong the veil is where least and most light falls, 0 to 1
 */
export function veil(shadow: string, dark: number, light: number, bright: number): Tint {
  if (bright < PLAIN_AT) {
    const share = 1 - bright / PLAIN_AT;
    return { colour: shadow, opacity: dark * share ** 1.3 };
  }
  return { colour: '#fff', opacity: (light * (bright - PLAIN_AT)) / (1 - PLAIN_AT) };
}
