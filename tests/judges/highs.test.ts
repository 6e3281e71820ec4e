import loadHighs from 'highs';
import { expect, test, vi } from 'vitest';
import { fitStrand, strandLimits } from '#core/fit/fit.ts';
import { searchOf } from '#core/fit/search.ts';
import { random } from '#tests/core/fit/random.ts';
import { lengthModel } from './highsFit.ts';
import { necklace } from './necklaces.ts';

// The thorough sizes take minutes.
vi.setConfig({ testTimeout: 3_600_000 });

const NECKLACES = process.env['CLASPWISE_THOROUGH'] ? 10_000 : 60;

test('necklaces: the optimum of integer programming, preference after preference', async () => {
  const highs = await loadHighs();
  let outside = 0;
  for (let seed = 1; seed <= NECKLACES; seed += 1) {
    const of = random(seed);
    const { problem, measure, baseHundredths, eachHundredths } = necklace(of, of.whole(1, 6), 20);
    const search = searchOf(problem, measure);
    const limits = strandLimits(search)!;
    const [least, most] = [limits.least.span.lowNm / 1e4, limits.most.span.highNm / 1e4];
    const target = of.whole(least, most);
    const tolerance = of.pick([0, 50, 300]);
    const wanted = { targetNm: target * 1e4, toleranceNm: tolerance * 1e4 };
    const fit = fitStrand(problem, search, wanted, limits);
    if (fit.status === 'outside') {
      outside += 1;
      continue;
    }
    const model = lengthModel(highs, problem, baseHundredths, eachHundredths);
    const judged = model.judge(target, tolerance);
    model.dispose();
    const { excess, cost, error, parts } = fit.best;
    expect({ excess, cost, error, parts }, `seed ${seed}`).toEqual(judged);
  }
  expect(outside).toBeLessThan(NECKLACES / 10);
});
