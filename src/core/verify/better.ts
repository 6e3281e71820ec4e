/**
 * Looks for a choice that is better than an answer, all strands together: every
 * choice of every strand is written out, and joined with the others' by what it
 * takes of the stock. Apart from the searches on purpose, and slower.
 *
 * A strand of more choices than can be written out is tried near the answer only:
 * up to two sections at a time, a few repeats away. What is found by the solver's
 * loop is measured again by the verifier's own before it counts.
 */
import type { Fitted } from '../design/choice.ts';
import type { Counts, Design, Strand } from '../design/design.ts';
import { expand } from '../design/expand.ts';
import { loopParts } from '../design/loopParts.ts';
import { solveLoop } from '../geometry/loop.ts';
import { boundsOf, lengthOf } from './candidate.ts';
import { costOfCounts, strung } from './parts.ts';
import { nearestLinkOffMm, offMm } from './strand.ts';

/** Choices of one strand written out: a length is a sum, a girth takes a loop. */
const MOST_CHOICES: Readonly<Record<Fitted, number>> = { length: 20_000, girth: 1000 };
/** How far from the answer a section is tried where there are more. */
const NEARBY = 3;
/** What no more than rounding tells apart, hundredths of a millimetre. */
const ROUNDING = 1;

/** How good one strand's choice, or several strands' together, is: excesses in hundredths of a millimetre. */
type Standing = { readonly greatest: number; readonly excess: number; readonly cost: number };

type Option = Standing & { readonly counts: Counts; readonly uses: readonly number[] };

/** What is asked of the strands, and out of what. */
export type Wanted = {
  readonly fitted: Fitted;
  readonly targetsMm: readonly number[];
  readonly toleranceMm: number;
  readonly pieces: number;
};

const hundredths = (mm: number): number => Math.round(Math.abs(mm) * 100);

function* everyCounts(strand: Strand): Generator<number[]> {
  const bounds = strand.sections.map(boundsOf);
  const counts = bounds.map(([fewest]) => fewest);
  for (;;) {
    yield [...counts];
    let at = counts.length - 1;
    while (at >= 0 && counts[at] === bounds[at]![1]) {
      counts[at] = bounds[at]![0];
      at -= 1;
    }
    if (at < 0) return;
    counts[at]! += 1;
  }
}

function* nearbyCounts(strand: Strand, answer: readonly number[]): Generator<number[]> {
  const bounds = strand.sections.map(boundsOf);
  const steps = (at: number): number[] => {
    const [fewest, most] = bounds[at]!;
    return Array.from({ length: 2 * NEARBY + 1 }, (_, step) => answer[at]! + step - NEARBY).filter(
      (count) => count >= fewest && count <= most,
    );
  };
  for (let one = 0; one < bounds.length; one += 1) {
    for (let other = 0; other <= one; other += 1) {
      for (const count of steps(one)) {
        for (const also of other === one ? [count] : steps(other)) {
          yield answer.with(one, count).with(other, also);
        }
      }
    }
  }
}

function countsToTry(strand: Strand, answer: readonly number[], most: number): Iterable<number[]> {
  const choices = strand.sections.reduce((product, section) => {
    const [fewest, largest] = boundsOf(section);
    return product * (largest - fewest + 1);
  }, 1);
  return choices <= most ? everyCounts(strand) : nearbyCounts(strand, answer);
}

/** How far a strand is off as the solver measures it, mm; the chain, if it may count on one, meets what it or its nearest link can. */
function roughlyOffMm(design: Design, index: number, counts: readonly number[], of: Wanted): number {
  const strand = design.strands[index]!;
  const one: Design = { ...design, strands: [strand], lie: 'single' };
  const measured = (chainMm: number): number =>
    of.fitted === 'length'
      ? lengthOf(design, strung(strand, counts), chainMm)
      : solveLoop(loopParts(one, expand(one, [counts])[0]!, chainMm)).insideGirthMm;
  const leastMm = measured(0);
  const targetMm = of.targetsMm[index]!;
  if (targetMm <= leastMm || design.strands.length > 1 || design.ends.extenderMm === 0) {
    return leastMm - targetMm;
  }
  const { extenderMm, linkMm } = design.ends;
  const mostMm = measured(extenderMm);
  if (targetMm >= mostMm) return mostMm - targetMm;
  return linkMm === undefined ? 0 : nearestLinkOffMm({ extenderMm, linkMm }, measured, targetMm);
}

function standingOf(
  design: Design,
  index: number,
  counts: readonly number[],
  offMm: number,
  of: Wanted,
): Standing {
  const excess = Math.max(0, hundredths(offMm) - hundredths(of.toleranceMm));
  return { greatest: excess, excess, cost: costOfCounts(design.strands[index]!, counts) };
}

const together = (one: Standing, other: Standing): Standing => ({
  greatest: Math.max(one.greatest, other.greatest),
  excess: one.excess + other.excess,
  cost: one.cost + other.cost,
});

const noWorse = (one: Standing, other: Standing): boolean =>
  one.greatest <= other.greatest && one.excess <= other.excess && one.cost <= other.cost;

/** Keeps of options that take the same only those that no other one equals in everything. */
function undominated(options: Iterable<Option>): Option[] {
  const kept = new Map<string, Option[]>();
  for (const option of options) {
    const key = option.uses.join();
    const alike = kept.get(key) ?? [];
    if (alike.some((one) => noWorse(one, option))) continue;
    kept.set(key, [...alike.filter((one) => !noWorse(option, one)), option]);
  }
  return [...kept.values()].flat();
}

/** Counted components and how many the sections of one piece may take of each. */
function stockOf(design: Design, pieces: number): ReadonlyMap<string, number> {
  const { ends, hanging, strands } = design;
  const atEnds = [ends.crimp, ends.cover, ends.guard].flatMap((id) =>
    new Array<typeof id>(2 * strands.length).fill(id),
  );
  const findings = [...atEnds, ends.clasp, ends.ring, hanging?.pendant ?? null, ...(hanging?.rings ?? [])];
  return new Map(
    Object.values(design.components).flatMap(({ id, stock }) => {
      if (stock === null) return [];
      return [[id, Math.floor(stock / pieces) - findings.filter((one) => one === id).length] as const];
    }),
  );
}

/** Whether what is so bad so far could still be part of something better than the answer: no strand makes it better again. */
const hopeless = (so: Standing, answer: Standing): boolean =>
  so.greatest > answer.greatest ||
  so.excess > answer.excess ||
  (answer.excess === 0 && so.cost >= answer.cost);

/** Every choice of one strand that could be part of something better. */
function* optionsOf(
  design: Design,
  index: number,
  choices: Iterable<number[]>,
  stock: readonly string[],
  of: Wanted,
  answer: Standing,
): Generator<Option> {
  const strand = design.strands[index]!;
  for (const counts of choices) {
    // What changes too much already need not be measured.
    const least = standingOf(design, index, counts, 0, of);
    if (hopeless(least, answer) && least.cost > 0) continue;
    const standing = standingOf(design, index, counts, roughlyOffMm(design, index, counts, of), of);
    if (standing.greatest > answer.greatest + ROUNDING) continue;
    const ids = strung(strand, counts);
    const uses = stock.map((id) => ids.filter((one) => one === id).length);
    yield { ...standing, counts: [counts], uses };
  }
}

function* joined(
  one: readonly Option[],
  other: readonly Option[],
  left: readonly number[],
  answer: Standing,
): Generator<Option> {
  for (const a of one) {
    for (const b of other) {
      const standing = together(a, b);
      if (hopeless(standing, answer)) continue;
      const uses = a.uses.map((used, at) => used + b.uses[at]!);
      if (uses.some((used, at) => used > left[at]!)) continue;
      yield { ...standing, counts: [...a.counts, ...b.counts], uses };
    }
  }
}

/** Whether `one`, which isn't hopeless beside `other`, is preferred to it by more than rounding. */
function preferred(one: Standing, other: Standing): boolean {
  if (one.greatest !== other.greatest) return one.greatest < other.greatest - ROUNDING;
  if (one.excess !== other.excess) return one.excess < other.excess - ROUNDING;
  // Where both meet all that is asked, what costs as much was hopeless.
  return one.excess === 0;
}

/** A choice that is better than the answer and that the stock allows; null where none is found. */
export function betterChoice(design: Design, answer: Counts, of: Wanted): Counts | null {
  const measured = (counts: Counts): Standing =>
    counts
      .map((each, index) =>
        standingOf(design, index, each, offMm(design, index, each, of.fitted, of.targetsMm[index]!), of),
      )
      .reduce(together);
  const standing = measured(answer);
  const stock = stockOf(design, of.pieces);
  const ids = [...stock.keys()];
  const left = [...stock.values()];
  let found: Option[] = [{ greatest: 0, excess: 0, cost: 0, counts: [], uses: ids.map(() => 0) }];
  design.strands.forEach((strand, index) => {
    const choices = countsToTry(strand, answer[index] ?? [], MOST_CHOICES[of.fitted]);
    const options = undominated(optionsOf(design, index, choices, ids, of, standing));
    found = undominated(joined(found, options, left, standing));
  });
  return (
    found.find((one) => preferred(one, standing) && preferred(measured(one.counts), standing))?.counts ?? null
  );
}
