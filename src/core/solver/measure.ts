/** What a strand measures with given counts: the one thing that tells a length fit from a girth fit. */
import type { Part } from '../geometry/part.ts';
import type { Design, Section, Strand } from '../design/design.ts';
import { expand } from '../design/expand.ts';
import { loopParts } from '../design/loopParts.ts';
import { isEven, type Box } from './box.ts';
import { sidesOf } from './problem.ts';
import { toNm, type Span } from './outcome.ts';

/** Measures a strand of given counts, one for each of its sections. */
export type Measuring = (counts: readonly number[]) => Span;

/**
 * A measure, and how far a search may reason about it without measuring: of
 * two choices that agree in every section below its `evenFrom`, the one with
 * no fewer repeats anywhere doesn't measure less, as long as the smaller one
 * measures `evenAboveNm` or more.
 */
export type Measure = {
  readonly of: Measuring;
  readonly evenFrom: readonly number[];
  readonly evenAboveNm: number;
  /** The same at less effort, surely within `roughNm`. */
  readonly rough: Measuring;
  readonly roughNm: number;
  /** The low end as it probably is, at no effort, mostly within `guessOffNm`; only ever to choose what to look at. */
  readonly guessNm: (counts: readonly number[]) => number;
  readonly guessOffNm: number;
  /** Where the measure is a plain sum: what one repeat of each section adds, nm. Else null. */
  readonly eachNm: readonly number[] | null;
};

/** Whether a measure is surely even across a box, from what its low corner roughly measures. */
export function isSurelyEven(measure: Measure, box: Box): boolean {
  const { evenFrom, evenAboveNm, rough, roughNm } = measure;
  // Nothing measures less than nothing, so there is no need to measure.
  return isEven(box, evenFrom) && (evenAboveNm <= 0 || rough(box.low).lowNm - roughNm >= evenAboveNm);
}

/** The parts of one strand's loop, with the extender let out by `chainMm`. */
export function strandLoop(
  design: Design,
  strand: number,
  counts: readonly number[],
  chainMm: number,
): Part[] {
  const one: Design = { ...design, strands: design.strands.slice(strand, strand + 1) };
  return loopParts(one, expand(one, [counts])[0] ?? [], chainMm);
}

function repeatNm(design: Design, strand: Strand, section: Section): number {
  const once = section.motif.reduce(
    (sum, part) => sum + part.count * toNm(design.components[part.component]!.alongMm),
    0,
  );
  return once * sidesOf(strand, section);
}

/**
 * A plain sum, even everywhere.
 * @param eachNm what one repeat of each section adds.
 * @param baseNm what there is without any.
 * @param chainNm how far the extender may be let out; 0 without one.
 */
export function sumMeasure(
  eachNm: readonly number[],
  baseNm: number,
  chainNm: number,
): Measure & { readonly eachNm: readonly number[] } {
  const of = (counts: readonly number[]): Span => {
    const lowNm = eachNm.reduce((sum, nm, index) => sum + counts[index]! * nm, baseNm);
    return { lowNm, highNm: lowNm + chainNm };
  };
  return {
    of,
    evenFrom: eachNm.map(() => 0),
    evenAboveNm: -Infinity,
    rough: of,
    roughNm: 0,
    guessNm: (counts) => of(counts).lowNm,
    guessOffNm: chainNm,
    eachNm,
  };
}

/**
 * Finished length, a plain sum.
 * @param chainMm how far the extender may be let out; 0 without one.
 */
export function lengthMeasure(design: Design, strand: number, chainMm: number): Measure {
  const found = design.strands[strand]!;
  const bare = strandLoop(design, strand, [], 0);
  const baseNm = bare.reduce((sum, part) => sum + toNm(part.alongMm), 0);
  const eachNm = found.sections.map((section) => repeatNm(design, found, section));
  return sumMeasure(eachNm, baseNm, toNm(chainMm));
}
