/** What a learner lays ready to string one piece: every component with its count, wire to cut, and some to spare. */
import { linkAt } from '../design/chain.ts';
import type { Component } from '../design/component.ts';
import type { Counts, Design } from '../design/design.ts';
import { tally, tallyFindings, tallyStrand } from '../design/tally.ts';
import type { StrandCard } from './card.ts';

export type Material = {
  readonly component: string;
  /** As many as the piece takes. */
  readonly count: number;
  /** As many more as a learner should have. */
  readonly spares: number;
};

export type Materials = {
  /** What is strung, in the order in which it is met first, then what closes and hangs. */
  readonly components: readonly Material[];
  readonly wire: {
    readonly wire: string;
    /** One length a strand, mm. */
    readonly cutsMm: readonly number[];
    /** All of them, and the longest once more: what a crimp closed amiss costs. */
    readonly haveMm: number;
  };
  /** Chain to buy by the length, mm; 0 for none. */
  readonly chainMm: number;
  /** Whole links of it; null where their length isn't known. */
  readonly links: number | null;
};

/** Beads of which one is to spare: some are cracked, some have hardly a hole (common practice, no source). */
const BEADS_A_SPARE = 20;
/** A crimp that is squeezed amiss is cut away with its wire; a learner needs one to try, and one more (common practice, no source). */
const SPARE_CRIMPS = 2;

function sparesOf({ kind, joint }: Component, count: number): number {
  switch (kind) {
    case 'crimp':
      return SPARE_CRIMPS;
    case 'cover':
      return 1;
    case 'ring':
      return joint === 'open' ? 1 : 0;
    case 'bead':
    case 'spacer':
    case 'cap':
      // A bead that stands alone is looked at before it is bought.
      return count === 1 ? 0 : Math.ceil(count / BEADS_A_SPARE);
    default:
      return 0;
  }
}

/** @param strands the cards of all strands, for the wire that each is cut from */
export function materialsOf(design: Design, counts: Counts, strands: readonly StrandCard[]): Materials {
  const all = tally(design, counts);
  const strung = design.strands.flatMap((strand, index) => [
    ...tallyStrand(strand, counts[index] ?? []).keys(),
  ]);
  const order = new Set([...strung, ...tallyFindings(design).keys()]);
  const cutsMm = strands.map(({ cut }) => cut.totalMm);
  return {
    components: [...order].flatMap((id) => {
      const component = design.components[id];
      const count = all.get(id) ?? 0;
      return component === undefined || count === 0
        ? []
        : [{ component: id, count, spares: sparesOf(component, count) }];
    }),
    wire: {
      wire: design.wire.id,
      cutsMm,
      haveMm: cutsMm.reduce((sum, mm) => sum + mm, 0) + Math.max(0, ...cutsMm),
    },
    chainMm: design.ends.extenderMm,
    links: linkAt(design.ends, design.ends.extenderMm),
  };
}
