/** What a strand measures with given counts: the one thing that tells a length fit from a girth fit. */
import type { Part } from '../geometry/part.ts';
import type { Design, Strand } from '../strand/design.ts';
import { expand } from '../strand/expand.ts';
import { loopParts } from '../strand/parts.ts';
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

/** How far the extender may be let out, mm. */
export type Chain = { readonly leastMm: number; readonly mostMm: number };

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

function repeatNm(design: Design, strand: Strand, index: number): number {
  const section = strand.sections[index];
  if (section === undefined) return 0;
  const once = section.motif.reduce(
    (sum, part) => sum + part.count * toNm(design.components[part.component]?.alongMm ?? 0),
    0,
  );
  return once * sidesOf(strand, section);
}

/** Finished length: a plain sum, even everywhere. */
export function lengthMeasure(design: Design, strand: number, chain: Chain): Measure {
  const found = design.strands[strand];
  const sections = found?.sections ?? [];
  const bare = strandLoop(design, strand, [], 0);
  const baseNm = bare.reduce((sum, part) => sum + toNm(part.alongMm), 0);
  const eachNm = sections.map((_, index) => (found === undefined ? 0 : repeatNm(design, found, index)));
  const leastNm = toNm(chain.leastMm);
  const mostNm = toNm(chain.mostMm);
  const of = (counts: readonly number[]): Span => {
    let sum = baseNm;
    for (let index = 0; index < eachNm.length; index += 1) sum += (counts[index] ?? 0) * (eachNm[index] ?? 0);
    return { lowNm: sum + leastNm, highNm: sum + mostNm };
  };
  return {
    of,
    evenFrom: sections.map(() => 0),
    evenAboveNm: -Infinity,
    rough: of,
    roughNm: 0,
    guessNm: (counts) => of(counts).lowNm,
    guessOffNm: mostNm,
    eachNm,
  };
}
