import loadHighs from 'highs';
import { expect, test } from 'vitest';
import { fitJointly } from '#core/solver/fit.ts';
import { loneStrand } from '#core/solver/jointProblem.ts';
import { jointLimits } from '#core/solver/limits.ts';
import { SearchLimit } from '#core/solver/searchLimit.ts';
import { random, type Random } from '#tests/core/random.ts';
import { lengthModel } from './highsFit.ts';
import { necklace, type Necklace } from './necklaces.ts';

const THOROUGH = process.env['CLASPWISE_THOROUGH'] !== undefined;
/** The seeds of so many necklaces, but for a hard one that takes as long as all others of the usual run: that is left to the thorough one. */
const seedsOf = (necklaces: number, hard: number): readonly number[] =>
  Array.from({ length: necklaces }, (_, at) => at + 1).filter((seed) => THOROUGH || seed !== hard);
const FEW = seedsOf(THOROUGH ? 10_000 : 24, 2);
const MANY = seedsOf(THOROUGH ? 300 : 12, 6);

/** The fit of a random necklace against its judge; what the fit said of it. */
function judged(of: Random, { problem, measure, baseHundredths, eachHundredths }: Necklace) {
  const joint = loneStrand(problem, measure);
  const limits = jointLimits(joint, (_, nm) => nm)!;
  const [least, most] = [limits.least.firstNm / 1e4, limits.most.firstNm / 1e4];
  const target = of.whole(least, most);
  const tolerance = of.pick([0, 50, 300]);
  const fit = fitJointly(joint, [{ targetNm: target * 1e4, toleranceNm: tolerance * 1e4 }])!;
  if (fit.status === 'outside') return 'outside';
  const model = lengthModel(highs, problem, baseHundredths, eachHundredths);
  const optimum = model.judge(target, tolerance);
  model.dispose();
  const { excess, cost, error, parts } = fit.best[0]!;
  expect({ excess, cost, error, parts }).toEqual(optimum);
  return 'same';
}

const highs = await loadHighs();

/** What the fit said of so many necklaces, each from its own seed. */
function saidOf(seeds: readonly number[], make: (of: Random) => Necklace) {
  const said = { same: 0, outside: 0, tooLarge: 0 };
  for (const seed of seeds) {
    const of = random(seed);
    try {
      said[judged(of, make(of))] += 1;
    } catch (cause) {
      if (!(cause instanceof SearchLimit)) throw new Error(`seed ${seed}`, { cause });
      said.tooLarge += 1;
    }
  }
  return said;
}

test('necklaces: the optimum of integer programming, preference after preference', () => {
  const said = saidOf(FEW, (of) => necklace(of, of.whole(1, 6), 20));
  expect(said.tooLarge).toBe(0);
  expect(said.same).toBeGreaterThan(0.9 * FEW.length);
});

test('many sections that share what is counted: nearly all are answered, and as well', () => {
  const said = saidOf(MANY, (of) => necklace(of, of.whole(8, 14), 9, of.whole(1, 3)));
  expect(said.tooLarge).toBeLessThan(0.05 * MANY.length);
  expect(said.same).toBeGreaterThan(0.9 * MANY.length);
});
