/** From counts to the components on the wire, in stringing order. */
import type { Component } from './component.ts';
import type { Counts, Design, Strand } from './design.ts';
import { runsOf, type Run } from './runs.ts';

/** One component where it stands. */
export type Placed = {
  readonly component: Component;
  /** Section id; `end` for crimps, covers and what stands outside them. */
  readonly section: string;
  /** `left` and `right` as the maker sees the board with the clasp end on the left; `centre` for the focal section. */
  readonly side: 'left' | 'centre' | 'right';
  /** A crimp inside its cover: it is strung, but takes no length of its own and isn't seen. */
  readonly covered?: true;
};

/** Components of one strand that are ever laid out; the longest real strand is far below. */
const MOST_PLACED = 4000;

type Side = Placed['side'];

/** Appends a run, its motif `repeats` times. */
function addRun(into: Placed[], design: Design, strand: Strand, run: Run, repeats: number): void {
  const section = strand.sections[run.section]?.id ?? '';
  for (let repeat = 0; repeat < repeats; repeat += 1) {
    for (const part of run.motif) {
      const component = design.components[part.component];
      if (component === undefined) continue;
      for (let copy = 0; copy < part.count && into.length < MOST_PLACED; copy += 1) {
        into.push({ component, section, side: run.side });
      }
    }
  }
}

/** The crimp of one end with its cover, the crimp outermost. */
function endPieces(design: Design, side: 'left' | 'right'): Placed[] {
  const crimp = design.components[design.ends.crimp];
  const cover = design.ends.cover === null ? undefined : design.components[design.ends.cover];
  const pieces: Placed[] = [];
  if (crimp !== undefined) {
    const bare: Placed = { component: crimp, section: 'end', side };
    pieces.push(cover === undefined ? bare : { ...bare, covered: true });
  }
  if (cover !== undefined) pieces.push({ component: cover, section: 'end', side });
  return side === 'left' ? pieces : pieces.toReversed();
}

/** What a one-run strand has before its middle lies on the left. */
function sideByMiddle(strung: readonly Placed[]): Placed[] {
  return strung.map((placed, index): Placed => {
    const side: Side = index < strung.length / 2 ? 'left' : 'right';
    return { ...placed, side };
  });
}

/**
 * Every strand in stringing order, clasp end to ring end: crimp (with its
 * cover, if any), the sections, cover and crimp. Clasp, ring, wire loops and
 * what hangs from the wire aren't in it. A covered crimp is listed and marked
 * `covered`. Unknown components are passed over; `validateDesign` names them.
 */
export function expand(design: Design, counts: Counts): Placed[][] {
  return design.strands.map((strand, index) => {
    const strung: Placed[] = [];
    for (const run of runsOf(strand)) {
      addRun(strung, design, strand, run, counts[index]?.[run.section] ?? 0);
    }
    const sided = strand.mirrored ? strung : sideByMiddle(strung);
    return [...endPieces(design, 'left'), ...sided, ...endPieces(design, 'right')];
  });
}
