/** Where one component sits in a drawing. Millimetres, x to the right, y down, as SVG has it. */
import type { Component } from '#core/design/component.ts';
import type { Placed } from '#core/design/expand.ts';

export type Spot = {
  readonly component: Component;
  readonly section: string;
  readonly side: Placed['side'];
  /** Place in its strand, 0 at the clasp end. Seeds the component's figure, so that the same bead looks the same in every view. */
  readonly index: number;
  /** Its centre. */
  readonly xMm: number;
  readonly yMm: number;
  /** Direction of its hole, from the clasp end on; clockwise from rightwards. */
  readonly turnRad: number;
  /** True where what isn't alike at both ends (a bead cap) opens towards the clasp end. */
  readonly opensBack: boolean;
  /** Share of its length that is seen, where it is looked at aslant; all of it where left out. */
  readonly seenShare?: number;
};

/** Everything about a spot but its place. */
export type Part = Omit<Spot, 'xMm' | 'yMm' | 'turnRad' | 'seenShare'>;

/** What is seen of a strand, with its numbers, before it has a place: a crimp inside its cover is not. */
export function toParts(sequence: readonly Placed[]): Part[] {
  const seen = sequence.filter((placed) => placed.covered !== true);
  return seen.map((placed, index) => ({
    component: placed.component,
    section: placed.section,
    side: placed.side,
    index,
    opensBack: opensBack(seen, index),
  }));
}

/** The strand as seen with its clasp end on the right: the last is first, and what faced left faces right. */
export function turnedRound(parts: readonly Part[]): Part[] {
  const sides = { left: 'right', centre: 'centre', right: 'left' } as const;
  return parts.toReversed().map((part) => ({ ...part, side: sides[part.side], opensBack: !part.opensBack }));
}

/** A cap holds the fatter of its neighbours. */
function opensBack(seen: readonly Placed[], index: number): boolean {
  return fatness(seen[index - 1]?.component) > fatness(seen[index + 1]?.component);
}

function fatness(component: Component | undefined): number {
  return component === undefined || component.kind === 'cap' ? 0 : component.acrossMm;
}

/** Height of the lowest centre, where what hangs hangs from; the origin's at least. */
export const lowestMm = (spots: readonly Spot[]): number => Math.max(0, ...spots.map(({ yMm }) => yMm));
