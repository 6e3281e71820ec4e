/** The inside girth of a strand for any counts, without laying it out anew each time. */
import { closeTaut } from '../geometry/close.ts';
import type { Part } from '../geometry/part.ts';
import { loadTaut, newTaut, outlinesOf } from '../geometry/taut.ts';
import type { Design } from '../design/design.ts';
import { expand } from '../design/expand.ts';
import { closingParts, partOf } from '../design/loopParts.ts';
import { runsOf } from '../design/runs.ts';
import type { Measure, Measuring } from './measure.ts';
import { toNm, type Span } from './outcome.ts';

/** A stretch of the loop: kinds of outline, repeated as its section counts, or once where it has none. */
type Stretch = { readonly section: number | null; readonly kinds: readonly number[] };

/** Radius is still when it moves by less, mm: a thousandth of what the result is rounded to. */
const STILL_MM = 1e-9;
/** The same for a rough girth: each sweep at least halves what is left, so the girth is off by far less than `ROUGH_NM`. */
const ROUGH_STILL_MM = 0.02;
const ROUGH_NM = 500_000;
/** How far a guess by length alone is mostly off, nm. */
const GUESS_OFF_NM = 6_000_000;

/** A strand's loop as stretches, closed with the extender let out by each of `chainsMm`. */
function stretchesOf(
  design: Design,
  strand: number,
  chainsMm: readonly number[],
): { readonly parts: readonly Part[]; readonly loops: readonly (readonly Stretch[])[] } {
  const found = design.strands[strand]!;
  const bare = expand({ ...design, strands: [found] }, [[]])[0]!;
  const parts: Part[] = [];
  // What takes no length isn't in the loop.
  const stretch = (section: number | null, list: readonly Part[]): Stretch => ({
    section,
    kinds: list.filter((part) => part.alongMm > 0).map((part) => parts.push(part) - 1),
  });
  const end = (side: string): Stretch => {
    const seen = bare.filter((at) => at.side === side && at.covered !== true);
    return stretch(
      null,
      seen.map(({ component }) => partOf(component)),
    );
  };
  const strung = runsOf(found).map(({ section, motif }): Stretch => {
    const each = motif.flatMap((part) =>
      new Array<Part>(part.count).fill(partOf(design.components[part.component]!)),
    );
    return stretch(section, each);
  });
  const open = [end('left'), ...strung, end('right')];
  const loops = chainsMm.map((chainMm) => [...open, stretch(null, closingParts(design, chainMm))]);
  return { parts, loops };
}

type Solver = {
  /** Girth, nm, the radius still to `stillMm`; 0 where it doesn't close. */
  readonly solveNm: (counts: readonly number[], stillMm: number) => number;
  readonly guessNm: (counts: readonly number[]) => number;
};

/** Solves loops of stretches for counts, one after the other on the same arrays. */
function solver(parts: readonly Part[], loop: readonly Stretch[]): Solver {
  const outlines = outlinesOf(parts);
  let sequence = new Int32Array(0);
  let taut = newTaut(0);
  let lastRadius = 0;
  let lastLength = 0;
  const lengthsMm = loop.map(({ kinds }) => kinds.reduce((sum, kind) => sum + parts[kind]!.alongMm, 0));
  const timesOf = (counts: readonly number[]): number[] =>
    loop.map(({ section }) => (section === null ? 1 : counts[section]!));
  const lengthMm = (counts: readonly number[]): number =>
    timesOf(counts).reduce((sum, times, index) => sum + times * lengthsMm[index]!, 0);
  const fill = (counts: readonly number[]): number => {
    const times = timesOf(counts);
    const count = loop.reduce((sum, { kinds }, index) => sum + kinds.length * times[index]!, 0);
    if (count > sequence.length) {
      sequence = new Int32Array(2 * count);
      taut = newTaut(2 * count);
    }
    let at = 0;
    loop.forEach(({ kinds }, index) => {
      for (let left = times[index]!; left > 0; left -= 1) {
        for (let kind = 0; kind < kinds.length; kind += 1) sequence[at++] = kinds[kind]!;
      }
    });
    return count;
  };
  /** Girth goes up with length, roughly one for one. */
  const guessRadius = (atMm: number): number => lastRadius + (atMm - lastLength) / (2 * Math.PI);
  return {
    solveNm: (counts, stillMm) => {
      const count = fill(counts);
      if (count < 3) return 0;
      loadTaut(taut, outlines, sequence, count);
      const radius = closeTaut(taut, lastRadius > 0 ? guessRadius(taut.lengthMm) : 0, stillMm);
      if (radius > 0) {
        lastRadius = radius;
        lastLength = taut.lengthMm;
      }
      return toNm(2 * Math.PI * radius);
    },
    guessNm: (counts) => toNm(2 * Math.PI * guessRadius(lengthMm(counts))),
  };
}

/** Remembers what it has measured, since a search comes back to many. */
function remembering(solvers: readonly Solver[], stillMm: number): Measuring {
  const known = new Map<string, Span>();
  return (counts) => {
    const key = counts.join();
    const found = known.get(key);
    if (found !== undefined) return found;
    const lowNm = solvers[0]!.solveNm(counts, stillMm);
    const span = { lowNm, highNm: solvers[1]?.solveNm(counts, stillMm) ?? lowNm };
    known.set(key, span);
    return span;
  };
}

/** Half the flat of a part's end: what it turns on. None for a ball. */
function rimMm(part: Part): number {
  return Math.max(0, part.acrossMm / 2 - part.roundingMm);
}

/** A part whose distance from its like doesn't hang on how they turn. */
function isBall(part: Part): boolean {
  return part.alongMm === 2 * part.roundingMm && part.acrossMm === part.alongMm;
}

/** The loop may be taken as even from a radius of this many times its widest rim. */
const RIMS_TO_EVEN = 2;

/**
 * Inside girth. How far it is even:
 *
 * - One more repeat of a motif that is there already never shrinks the loop
 *   where distances don't hang on turns. Proof: the copy may lie exactly as far
 *   out as what it copies, raised where it must be to reach it; every old chord
 *   keeps its angle and the copy's own are not negative, so the strand comes at
 *   least as far round as before.
 * - Parts with rims come nearer as they turn less, so a first copy beside other
 *   neighbours may take more than it brings. From the second repeat on the new
 *   one finds the same neighbours that the old ones have; that, and that the
 *   loop must be wide against its widest rim, isn't proven but held against
 *   exhaustive search in the tests.
 *
 * @param chainMm how far the extender may be let out; 0 without one.
 */
export function girthMeasure(design: Design, strand: number, chainMm: number): Measure {
  const chains = chainMm > 0 ? [0, chainMm] : [0];
  const { parts, loops } = stretchesOf(design, strand, chains);
  const solvers = loops.map((loop) => solver(parts, loop));
  const balls = loops[0]!
    .filter(({ section }) => section !== null)
    .every(({ kinds }) => kinds.every((kind) => isBall(parts[kind]!)));
  return {
    of: remembering(solvers, STILL_MM),
    evenFrom: design.strands[strand]!.sections.map(() => (balls ? 1 : 2)),
    evenAboveNm: toNm(2 * Math.PI * RIMS_TO_EVEN * Math.max(0, ...parts.map(rimMm))),
    rough: remembering(solvers, ROUGH_STILL_MM),
    roughNm: ROUGH_NM,
    guessNm: solvers[0]!.guessNm,
    guessOffNm: GUESS_OFF_NM + toNm(chainMm),
    eachNm: null,
  };
}
