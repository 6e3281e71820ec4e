/** From counts to the components on the wire, in stringing order. */
import type { Component } from '../components/component.ts';
import type { Counts, Design, MotifPart, Section, Strand } from './design.ts';

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
export const MOST_PLACED = 4000;

type Side = Placed['side'];

/** Appends a motif `repeats` times; backwards on the side that mirrors it. */
function addMotif(into: Placed[], design: Design, section: Section, repeats: number, side: Side): void {
  const motif: readonly MotifPart[] = side === 'left' ? section.motif.toReversed() : section.motif;
  for (let repeat = 0; repeat < repeats; repeat += 1) {
    for (const part of motif) {
      const component = design.components[part.component];
      if (component === undefined) continue;
      for (let copy = 0; copy < part.count && into.length < MOST_PLACED; copy += 1) {
        into.push({ component, section: section.id, side });
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

/** Sections of a one-run strand before its middle lie left, those after it right. */
function addOneRun(into: Placed[], design: Design, strand: Strand, counts: readonly number[]): void {
  const start = into.length;
  strand.sections.forEach((section, index) => {
    addMotif(into, design, section, counts[index] ?? 0, 'right');
  });
  const middle = start + (into.length - start) / 2;
  for (let index = start; index < middle; index += 1) {
    const placed = into[index];
    if (placed !== undefined) into[index] = { ...placed, side: 'left' };
  }
}

function addMirrored(into: Placed[], design: Design, strand: Strand, counts: readonly number[]): void {
  const { sections } = strand;
  for (let index = sections.length - 1; index >= 0; index -= 1) {
    const section = sections[index];
    if (section !== undefined && section.role !== 'focal') {
      addMotif(into, design, section, counts[index] ?? 0, 'left');
    }
  }
  sections.forEach((section, index) => {
    if (section.role === 'focal') addMotif(into, design, section, counts[index] ?? 0, 'centre');
  });
  sections.forEach((section, index) => {
    if (section.role !== 'focal') addMotif(into, design, section, counts[index] ?? 0, 'right');
  });
}

/**
 * Every strand in stringing order, clasp end to ring end: crimp (with its
 * cover, if any), the sections, cover and crimp. Clasp, ring, wire loops and
 * what hangs from the wire aren't in it. A covered crimp is listed and marked
 * `covered`. Unknown components are passed over; `checkDesign` names them.
 */
export function expand(design: Design, counts: Counts): Placed[][] {
  return design.strands.map((strand, index) => {
    const placed = endPieces(design, 'left');
    const chosen = counts[index] ?? [];
    if (strand.mirrored) addMirrored(placed, design, strand, chosen);
    else addOneRun(placed, design, strand, chosen);
    placed.push(...endPieces(design, 'right'));
    return placed;
  });
}
