/** Every question that a fit asks, by either search, against every choice of counts written out. */
import { expect, test } from 'vitest';
import { boxSearch } from '#core/solver/boxSearch.ts';
import { searchOf } from '#core/solver/search.ts';
import { sumMeasure, type Measure } from '#core/solver/measure.ts';
import { compareNearest, compareOutcomes, evaluate, type Outcome, type Span } from '#core/solver/outcome.ts';
import type { FitProblem, FitSection } from '#core/solver/problem.ts';
import type { Search } from '#core/solver/questions.ts';
import { random, type Random } from '../random.ts';

function randomProblem(of: Random): FitProblem {
  const kinds = of.pick([0, 0, 1, 2]);
  const sections = Array.from({ length: of.whole(1, 4) }, (_, at): FitSection => {
    const fewest = of.whole(0, 2);
    const most = fewest + of.whole(0, 4);
    return {
      id: `s${at}`,
      usual: of.whole(fewest, most),
      fewest,
      most,
      cost: of.pick([1, 1, 2, 3, 0, 0.5]),
      partsPerRepeat: of.whole(1, 3),
      takes: Array.from({ length: kinds }, () => of.whole(0, 3)),
    };
  });
  const stock = Array.from({ length: kinds }, (_, at) => ({ component: `c${at}`, left: of.whole(0, 24) }));
  return { sections, stock };
}

function everyChoice(problem: FitProblem): number[][] {
  let choices: number[][] = [[]];
  for (const { fewest, most } of problem.sections) {
    choices = choices.flatMap((counts) =>
      Array.from({ length: most - fewest + 1 }, (_, step) => [...counts, fewest + step]),
    );
  }
  return choices.filter((counts) =>
    problem.stock.every(({ left }, kind) => {
      return problem.sections.reduce((sum, { takes }, at) => sum + takes[kind]! * counts[at]!, 0) <= left;
    }),
  );
}

type Piece = { readonly counts: readonly number[]; readonly span: Span };

const best = (
  problem: FitProblem,
  pieces: readonly Piece[],
  targetNm: number,
  toleranceNm: number,
  compare: typeof compareOutcomes,
): Outcome | null => {
  const judged = pieces.map(({ counts, span }) => evaluate(problem, { targetNm, toleranceNm }, counts, span));
  return judged.sort((one, other) => compare(problem, one, other))[0] ?? null;
};

/** Near a piece, and where whole hundredths round to one side or the other. */
const OFF_NM = [0, 0, 1, -1, 4000, -4000, 5000, -5000, 6000, -6000, 10_000, -10_000, 14_000, 250_000];
const TOLERANCES_NM = [0, 0, 4000, 10_000, 50_000, 2_000_000];

function askAll(of: Random, problem: FitProblem, measure: Measure, search: Search, seed: number): void {
  const pieces = everyChoice(problem).map((counts): Piece => ({ counts, span: measure.of(counts) }));
  const anywhere = [{ counts: [], span: measure.of(problem.sections.map(({ most }) => most)) }];
  for (let round = 0; round < 12; round += 1) {
    const { span } = of.pick(pieces.length > 0 ? pieces : anywhere);
    const targetNm = of.pick([span.lowNm, span.highNm]) + of.pick(OFF_NM);
    const toleranceNm = of.pick(TOLERANCES_NM);
    const said = `seed ${seed}, ${targetNm} nm within ${toleranceNm}`;
    const near = best(problem, pieces, targetNm, toleranceNm, compareOutcomes);
    expect(search.within({ targetNm, toleranceNm }), said).toEqual(near?.excess === 0 ? near : null);
    const below = pieces.filter((piece) => piece.span.highNm <= targetNm);
    expect(search.nearest(targetNm, 'below'), said).toEqual(
      best(problem, below, targetNm, 0, compareNearest),
    );
    const above = pieces.filter((piece) => piece.span.lowNm >= targetNm);
    expect(search.nearest(targetNm, 'above'), said).toEqual(
      best(problem, above, targetNm, 0, compareNearest),
    );
    const toNm = targetNm + toleranceNm;
    const between = pieces.filter((piece) => piece.span.lowNm <= toNm && piece.span.highNm >= targetNm);
    const found = search.between(targetNm, toNm);
    if (between.length === 0) {
      expect(found, said).toBeNull();
    } else {
      expect(between.map(({ counts }) => counts)).toContainEqual(found!.counts);
      expect(found, said).toEqual(
        evaluate(problem, { targetNm: toNm, toleranceNm: 0 }, found!.counts, measure.of(found!.counts)),
      );
    }
  }
}

function sums(of: Random, problem: FitProblem): ReturnType<typeof sumMeasure> {
  const unit = of.pick([1000, 3000, 4000, 250_000, 1_000_000]);
  const eachNm = problem.sections.map(() => unit * of.whole(of.next() < 0.1 ? 0 : 1, 9));
  const chainNm = of.pick([0, 0, 3 * unit, 20 * unit]);
  const baseNm = of.whole(0, 30) * 1_000_000;
  return sumMeasure(eachNm, baseNm, chainNm);
}

/** The same to and fro for the same counts, from -1 to below 1. */
const noise = (counts: readonly number[], seed: number): number =>
  2 * random(counts.reduce((mixed, count) => mixed * 31 + count, seed)).next() - 1;

/**
 * What a search may be told of a girth: any to and fro between none and some of
 * a section, some of it between counts, bounded more or less widely, badly guessed.
 */
function bumpy(of: Random, problem: FitProblem, seed: number): Measure {
  const plain = sums(of, problem);
  const wideNm = of.pick([0, 6000, 500_000, 20_000_000]);
  const moved = ({ lowNm, highNm }: Span, byNm: number): Span => ({
    lowNm: lowNm + Math.round(byNm),
    highNm: highNm + Math.round(byNm),
  });
  /** What all choices that leave out the same sections share, and by how much a choice may lie beyond. */
  const bumpNm = (counts: readonly number[]): number =>
    10_000_000 *
    (noise(
      counts.map((count) => Math.min(count, 1)),
      seed,
    ) +
      1);
  const apartNm = 1_000_000;
  return {
    of: (counts) => moved(plain.of(counts), bumpNm(counts) + apartNm * noise(counts, seed + 1)),
    least: (counts) =>
      moved(plain.of(counts), bumpNm(counts) - apartNm - wideNm * (noise(counts, seed + 2) + 1)),
    most: (counts) =>
      moved(plain.of(counts), bumpNm(counts) + apartNm + wideNm * (noise(counts, seed + 3) + 1)),
    zeroApart: true,
    guessNm: (counts) => plain.of(counts).lowNm + Math.round(3_000_000 * noise(counts, seed + 4)),
    guessOffNm: 1_000_000,
    eachNm: null,
  };
}

const SEEDS = process.env['CLASPWISE_THOROUGH'] ? 20_000 : 250;

test('sums, by few changes first and by boxes with their linear bound', () => {
  for (let seed = 1; seed <= SEEDS; seed += 1) {
    const of = random(seed);
    const problem = randomProblem(of);
    const measure = sums(of, problem);
    askAll(of, problem, measure, searchOf(problem, measure), seed);
  }
});

test('sums, by the corners of boxes alone', () => {
  for (let seed = 1; seed <= SEEDS; seed += 1) {
    const of = random(seed);
    const problem = randomProblem(of);
    const measure = { ...sums(of, problem), eachNm: null };
    askAll(of, problem, measure, boxSearch(problem, measure), seed);
  }
});

test('what goes to and fro and is only bounded, by boxes', () => {
  for (let seed = 1; seed <= SEEDS; seed += 1) {
    const of = random(seed);
    const problem = randomProblem(of);
    const measure = bumpy(of, problem, seed);
    askAll(of, problem, measure, boxSearch(problem, measure), seed);
  }
});
