/** How far a piece is out of balance about its middle, by length and by weight. */
import { massOf } from '../design/mass/mass.ts';
import type { Component } from '../design/component.ts';
import type { Design } from '../design/design.ts';
import type { Placed } from '../design/expand.ts';
import { hungPendant } from './hungPendant.ts';

/** Clasp and ring count for the length, not for the weight: at the back they pull neither way. */
export type Side = { readonly lengthMm: number; readonly massG: number };

export type Balance = {
  /** What should hang in the middle: a pendant, a focal section, or nothing but the middle of the strand. */
  readonly about: 'pendant' | 'focal' | 'middle';
  /** From the middle of `about` to where clasp and ring bear on each other; wire left out. */
  readonly claspSide: Side;
  readonly ringSide: Side;
  /** How far the middle hangs off the centre when the closing lies at the back: half the difference of the sides; above 0: the clasp's side is the longer, and it hangs towards the other. */
  readonly offMm: number;
  /** By how much the clasp's side is heavier; below 0: the ring's. */
  readonly heavierG: number;
  /**
   * Worth telling: off the middle of what is strung by more than the eye
   * forgives, or heavy enough to pull round. That clasp and ring differ is so
   * of nearly every piece, and is in `offMm` without being notable.
   */
  readonly notable: boolean;
};

/** A pendant this far off its middle shows (common practice, no source). */
export const SHOWS_MM = 5;
/** A side heavier by this share of the two pulls the clasp forward (common practice, no source). */
export const PULLS_SHARE = 0.05;

/** Components of the strand with their place from the clasp's bearing point. */
function places(design: Design, sequence: readonly Placed[]) {
  const clasp = design.components[design.ends.clasp];
  const ring = design.ends.ring === null ? undefined : design.components[design.ends.ring];
  const found: { component: Component; section: string | null; fromMm: number; toMm: number }[] = [];
  let at = 0;
  const put = (component: Component, section: string | null, alongMm: number) => {
    found.push({ component, section, fromMm: at, toMm: at + alongMm });
    at += alongMm;
  };
  if (clasp !== undefined) put(clasp, null, clasp.alongMm);
  at += design.ends.loopMm;
  for (const { component, section, covered } of sequence) {
    put(component, section, covered === true ? 0 : component.alongMm);
  }
  at += design.ends.loopMm;
  if (ring !== undefined) put(ring, null, ring.alongMm);
  return { found, lengthMm: at };
}

function middleOf(design: Design, sequence: readonly Placed[], found: ReturnType<typeof places>['found']) {
  const strung = found.filter(({ section }) => section !== null && section !== 'end');
  const startMm = strung[0]?.fromMm ?? 0;
  const middleMm = (startMm + (strung.at(-1)?.toMm ?? startMm)) / 2;
  const pendant = hungPendant(design, sequence);
  if (pendant !== null) return { about: 'pendant', atMm: middleMm + pendant.offMiddleMm, middleMm } as const;
  const focals = new Set(
    design.strands[0]?.sections.filter(({ role }) => role === 'focal').map(({ id }) => id) ?? [],
  );
  const focal = strung.filter(({ section }) => section !== null && focals.has(section));
  const first = focal[0];
  const last = focal.at(-1);
  if (first !== undefined && last !== undefined) {
    return { about: 'focal', atMm: (first.fromMm + last.toMm) / 2, middleMm } as const;
  }
  return { about: 'middle', atMm: middleMm, middleMm } as const;
}

/** Mass of what lies before a place; a component across it counts by its share. */
function massBefore(found: ReturnType<typeof places>['found'], atMm: number): number {
  const strung = found.filter(({ section }) => section !== null);
  return strung.reduce((sum, { component, fromMm, toMm }) => {
    const lengthMm = toMm - fromMm;
    const share = lengthMm > 0 ? Math.min(1, Math.max(0, (atMm - fromMm) / lengthMm)) : fromMm < atMm ? 1 : 0;
    return sum + share * massOf(component).massG;
  }, 0);
}

/** Weigh strand 0, as expanded, about its middle. */
export function balanceOf(design: Design, sequence: readonly Placed[]): Balance {
  const { found, lengthMm } = places(design, sequence);
  const { about, atMm, middleMm } = middleOf(design, sequence, found);
  const allG = massBefore(found, Infinity);
  const claspG = massBefore(found, atMm);
  const offMm = (2 * atMm - lengthMm) / 2;
  const heavierG = 2 * claspG - allG;
  return {
    about,
    claspSide: { lengthMm: atMm, massG: claspG },
    ringSide: { lengthMm: lengthMm - atMm, massG: allG - claspG },
    offMm,
    heavierG,
    notable: Math.abs(atMm - middleMm) > SHOWS_MM || Math.abs(heavierG) > PULLS_SHARE * allG,
  };
}
