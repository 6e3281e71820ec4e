import loadHighs from 'highs';
import { expect, test } from 'vitest';
import { fitJointly } from '#core/solver/fit.ts';
import { loneStrand } from '#core/solver/jointProblem.ts';
import { jointLimits } from '#core/solver/limits.ts';
import { SearchLimit } from '#core/solver/searchLimit.ts';
import { random, type Random } from '#tests/core/random.ts';
import { lengthModel, type Highs } from './highsFit.ts';
import { necklace, type Necklace } from './necklaces.ts';

const THOROUGH = process.env['CLASPWISE_THOROUGH'] !== undefined;

/** The fit of a random necklace against its judge; what the fit said of it. */
function judged(highs: Highs, of: Random, { problem, measure, baseHundredths, eachHundredths }: Necklace) {
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

/** What the fit said of so many necklaces, each from its own seed. */
async function saidOf(necklaces: number, make: (of: Random) => Necklace) {
  const highs = await loadHighs();
  const said = { same: 0, outside: 0, tooLarge: 0 };
  for (let seed = 1; seed <= necklaces; seed += 1) {
    const of = random(seed);
    try {
      said[judged(highs, of, make(of))] += 1;
    } catch (cause) {
      if (!(cause instanceof SearchLimit)) throw new Error(`seed ${seed}`, { cause });
      said.tooLarge += 1;
    }
  }
  return said;
}

test('necklaces: the optimum of integer programming, preference after preference', async () => {
  const necklaces = THOROUGH ? 10_000 : 40;
  const said = await saidOf(necklaces, (of) => necklace(of, of.whole(1, 6), 20));
  expect(said.tooLarge).toBe(0);
  expect(said.same).toBeGreaterThan(0.9 * necklaces);
});

test('many sections that share what is counted: nearly all are answered, and as well', async () => {
  const necklaces = THOROUGH ? 300 : 12;
  const said = await saidOf(necklaces, (of) => necklace(of, of.whole(8, 14), 9, of.whole(1, 3)));
  expect(said.tooLarge).toBeLessThan(0.05 * necklaces);
  expect(said.same).toBeGreaterThan(0.9 * necklaces);
});
