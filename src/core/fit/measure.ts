/** What a strand measures with given counts: the one thing that tells a length fit from a girth fit. */
import { solveLoop, type Part } from '../geometry/loop.ts';
import type { Counts, Design } from '../strand/design.ts';
import { expand } from '../strand/expand.ts';
import { loopParts } from '../strand/parts.ts';
import { toNm, type Span } from './outcome.ts';

/**
 * Measures a strand. The search relies on one property, monotony: of two
 * choices that leave out the same sections, the one with no fewer repeats
 * anywhere doesn't measure less.
 */
export type Measure = (counts: readonly number[]) => Span;

/** How far the extender is let out, mm: none, as far as it goes, or fixed. */
export type Chain = { readonly leastMm: number; readonly mostMm: number };

/** The parts of one strand's loop, with the extender let out by `chainMm`. */
export function strandLoop(
  design: Design,
  strand: number,
  counts: readonly number[],
  chainMm: number,
): Part[] {
  const one: Design = { ...design, strands: design.strands.slice(strand, strand + 1) };
  const all: Counts = [counts];
  return loopParts(one, expand(one, all)[0] ?? [], chainMm);
}

function lengthNm(parts: readonly Part[]): number {
  return parts.reduce((sum, part) => sum + toNm(part.alongMm), 0);
}

/** Finished length. A plain sum, so the share of every section is taken once. */
export function lengthMeasure(design: Design, strand: number, chain: Chain): Measure {
  const sections = design.strands[strand]?.sections ?? [];
  const none = sections.map(() => 0);
  const baseNm = lengthNm(strandLoop(design, strand, none, 0));
  const eachNm = sections.map(
    (_, index) =>
      lengthNm(
        strandLoop(
          design,
          strand,
          none.map((count, at) => (at === index ? 1 : count)),
          0,
        ),
      ) - baseNm,
  );
  const leastNm = toNm(chain.leastMm);
  const mostNm = toNm(chain.mostMm);
  return (counts) => {
    let sum = baseNm;
    for (let index = 0; index < eachNm.length; index += 1) sum += (counts[index] ?? 0) * (eachNm[index] ?? 0);
    return { lowNm: sum + leastNm, highNm: sum + mostNm };
  };
}

function girthNm(parts: readonly Part[]): number {
  return toNm(solveLoop(parts).insideGirthMm);
}

/** Inside girth, remembered for each choice of counts, since a search comes back to many. */
export function girthMeasure(design: Design, strand: number, chain: Chain): Measure {
  const known = new Map<string, Span>();
  return (counts) => {
    const key = counts.join();
    const found = known.get(key);
    if (found !== undefined) return found;
    const lowNm = girthNm(strandLoop(design, strand, counts, chain.leastMm));
    const highNm =
      chain.mostMm > chain.leastMm ? girthNm(strandLoop(design, strand, counts, chain.mostMm)) : lowNm;
    const span = { lowNm, highNm };
    known.set(key, span);
    return span;
  };
}
