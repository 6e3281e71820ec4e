/** The inside girth of a strand for any counts, without laying it out anew each time. */
import { closeLoop } from '../geometry/close.ts';
import type { Part } from '../geometry/part.ts';
import { outlinesOf } from '../geometry/junction.ts';
import { linksToFit } from '../design/chain.ts';
import type { Design } from '../design/design.ts';
import { girthBounds, type GirthBounds } from './girthBounds.ts';
import type { Measure, Measuring } from './measure.ts';
import { toNm, type Span } from './outcome.ts';
import { makersLimits } from './problem.ts';
import { lengthIn, stretchesOf, type Limits, type Stretch } from './stretches.ts';
import { strungLoop } from './strungLoop.ts';

const FULL_TURN = 2 * Math.PI;
/** Radius is still when it moves by less, mm: a thousandth of what the result is rounded to. */
const STILL_MM = 1e-9;
/** What a radius is off by at the most, as girth, nm. */
const OFF_NM = 10;
/** How far a guess by length alone is mostly off, nm. */
const GUESS_OFF_NM = 6_000_000;

type Girths = {
  /** 0 where the loop doesn't close. */
  readonly solveNm: (counts: readonly number[]) => number;
  readonly leastNm: (counts: readonly number[]) => number;
  readonly mostNm: (counts: readonly number[]) => number;
  readonly guessNm: (counts: readonly number[]) => number;
};

/** Girths of one loop, with any counts; each steers the next. */
function girthsOf(parts: readonly Part[], loop: readonly Stretch[], usual: readonly number[]): Girths {
  const outlines = outlinesOf(parts);
  const strung = strungLoop(outlines, loop);
  let bounds: GirthBounds | null = null;
  const bounded = (): GirthBounds => (bounds ??= girthBounds(parts, outlines, loop, strung, usual));
  let lastRadius = 0;
  let lastLength = 0;
  /** Girth goes up with length, roughly one for one. 0 before any is known. */
  const guess = (counts: readonly number[]): number => {
    const lengthMm = lengthIn(loop, parts, counts);
    return lastRadius > 0 ? lastRadius + (lengthMm - lastLength) / FULL_TURN : lengthMm / FULL_TURN;
  };
  return {
    solveNm: (counts) => {
      const work = strung.string(counts);
      if (work.count < 3) return 0;
      const radius = closeLoop(work, lastRadius > 0 ? guess(counts) : 0, STILL_MM);
      if (radius > 0) {
        lastRadius = radius;
        lastLength = work.lengthMm;
      }
      return toNm(FULL_TURN * radius);
    },
    leastNm: (counts) => toNm(FULL_TURN * bounded().leastRadius(counts, guess(counts))) - OFF_NM,
    mostNm: (counts) => toNm(FULL_TURN * bounded().mostRadius(counts, guess(counts))) + OFF_NM,
    guessNm: (counts) => toNm(FULL_TURN * guess(counts)),
  };
}

/** Remembers what it has measured, since a search comes back to many. */
function remembering(measures: readonly ((counts: readonly number[]) => number)[]): Measuring {
  const known = new Map<string, Span>();
  return (counts) => {
    const key = counts.join();
    const found = known.get(key);
    if (found !== undefined) return found;
    const lowNm = measures[0]!(counts);
    const span = { lowNm, highNm: measures[1]?.(counts) ?? lowNm };
    known.set(key, span);
    return span;
  };
}

/**
 * Inside girth, bounded as `girthBounds.ts` proves.
 * @param chainMm how far the extender may be let out by any length; 0 without one, or where its links are counted.
 * @param limits what counts may be asked about.
 */
export function girthMeasure(
  design: Design,
  strand: number,
  chainMm: number,
  limits: Limits = makersLimits,
): Measure {
  const { parts, loops } = stretchesOf(design, strand, chainMm > 0 ? [0, chainMm] : [0], limits);
  const usual = design.strands[strand]!.sections.map((section) => section.usual);
  if (linksToFit(design) > 0) usual.push(0);
  const girths = loops.map((loop) => girthsOf(parts, loop, usual));
  return {
    of: remembering(girths.map(({ solveNm }) => solveNm)),
    least: remembering(girths.map(({ leastNm }) => leastNm)),
    most: remembering(girths.map(({ mostNm }) => mostNm)),
    zeroApart: true,
    guessNm: girths[0]!.guessNm,
    guessOffNm: GUESS_OFF_NM + toNm(chainMm),
    eachNm: null,
  };
}
