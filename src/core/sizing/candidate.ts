/** One piece that can be made, with everything that is shown of it. */
import { wireMassG } from '../design/mass/mass.ts';
import { pieceMass } from '../design/mass/pieceMass.ts';
import { takenByRepeat } from '../solver/problem.ts';
import { solveLoop } from '../geometry/loop.ts';
import { priceOf } from './price/price.ts';
import type { Counts, Design } from '../design/design.ts';
import { expand } from '../design/expand.ts';
import { finishedLengthMm, loopParts } from '../design/loopParts.ts';
import type { Rules } from '../design/rules.ts';
import type { Candidate, Change } from './sizing.ts';
import type { Fitted } from '../design/choice.ts';

/** What every section changes by, those that stay left out. */
function changesOf(design: Design, counts: Counts): Change[] {
  return design.strands.flatMap((strand, at) =>
    strand.sections.flatMap((section, index): Change[] => {
      const to = counts[at]![index]!;
      const more = to - section.usual;
      if (more === 0) return [];
      const parts = [...takenByRepeat(strand, section)].map(([component, count]) => ({
        component,
        count: count * more,
      }));
      return [{ strand: at, section: section.id, from: section.usual, to, parts }];
    }),
  );
}

/** Mass of the piece as worn, grams: its components and the wire along them. */
function massG(design: Design, counts: Counts, lengthsMm: readonly number[]): number {
  const componentsG = pieceMass(design, counts).massG;
  return lengthsMm.reduce((all, lengthMm) => all + wireMassG(design.wire, lengthMm), componentsG);
}

/** What a candidate is judged against: null for the piece as it stands in the shop. */
export type Aim = {
  readonly targetMm: number;
  /** Of several strands the error of the one that is furthest off. */
  readonly worstMm: number;
  readonly within: boolean;
};

/** What the shop asks for the piece as it lists it; `design` may have another clasp or pendant since. */
export type Listing = { readonly priceMinor: number; readonly design: Design };

export function candidate(
  design: Design,
  rules: Rules,
  listing: Listing,
  counts: Counts,
  fitted: Fitted,
  chainUsedMm: number,
  aim: Aim | null,
): Candidate {
  const sequences = expand(design, counts);
  const lengthsMm = sequences.map((sequence) => finishedLengthMm(design, sequence, chainUsedMm));
  const girthsMm = sequences.map(
    (sequence) => solveLoop(loopParts(design, sequence, chainUsedMm)).insideGirthMm,
  );
  const insideGirthMm = Math.min(...girthsMm);
  // Of several strands the first is the one that is asked for: nested ones follow from it.
  const fittedMm = fitted === 'length' ? lengthsMm[0]! : insideGirthMm;
  return {
    counts,
    fittedMm,
    errorMm: aim === null ? 0 : design.strands.length === 1 ? fittedMm - aim.targetMm : aim.worstMm,
    withinTolerance: aim?.within ?? true,
    finishedLengthMm: Math.max(0, ...lengthsMm),
    insideGirthMm,
    chainUsedMm,
    changes: changesOf(design, counts),
    priceMinor: priceOf(design, counts, rules, listing.priceMinor, listing.design),
    massG: massG(design, counts, lengthsMm),
    sequences,
  };
}
