/** What a strand measures with given counts: the one thing that tells a length fit from a girth fit. */
import type { Part } from '../geometry/part.ts';
import { linksToFit } from '../design/chain.ts';
import type { Design, Section, Strand } from '../design/design.ts';
import { expand } from '../design/expand.ts';
import { loopParts } from '../design/loopParts.ts';
import { sidesOf } from './problem.ts';
import { toNm, type Span } from './outcome.ts';

/** Measures a strand of given counts, one for each of its sections, and of the links of its chain where a fit counts them. */
export type Measuring = (counts: readonly number[]) => Span;

/**
 * What a strand measures, and what a search may conclude for whole boxes of
 * counts without measuring each. `least` and `most` are proven bounds, sharp
 * for sums and mostly within some tenths of a millimetre for girths.
 */
export type Measure = {
  readonly of: Measuring;
  /**
   * Both ends of every choice that has no fewer of any section than these
   * counts, and none of those that these have none of, are no less than this.
   */
  readonly least: Measuring;
  /** The same the other way: of every choice with no more of any section, and some of all that these have some of. */
  readonly most: Measuring;
  /**
   * Whether a box must not hold both none and some of a section for `least`
   * and `most` to say anything of it: a girth may shrink with the first of a kind.
   */
  readonly zeroApart: boolean;
  /** The low end as it probably is, at no effort, mostly within `guessOffNm`; only ever to choose what to look at. */
  readonly guessNm: (counts: readonly number[]) => number;
  readonly guessOffNm: number;
  /** Where the measure is a plain sum: what one repeat of each section adds, nm. Else null. */
  readonly eachNm: readonly number[] | null;
};

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
 * A plain sum, its own bound either way.
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
    least: of,
    most: of,
    zeroApart: false,
    guessNm: (counts) => of(counts).lowNm,
    guessOffNm: chainNm,
    eachNm,
  };
}

/**
 * Finished length, a plain sum.
 * @param chainMm how far the extender may be let out by any length; 0 without one, or where its links are counted.
 */
export function lengthMeasure(design: Design, strand: number, chainMm: number): Measure {
  const found = design.strands[strand]!;
  const bare = strandLoop(design, strand, [], 0);
  const baseNm = bare.reduce((sum, part) => sum + toNm(part.alongMm), 0);
  const eachNm = found.sections.map((section) => repeatNm(design, found, section));
  if (linksToFit(design) > 0) eachNm.push(toNm(design.ends.linkMm!));
  return sumMeasure(eachNm, baseNm, toNm(chainMm));
}
