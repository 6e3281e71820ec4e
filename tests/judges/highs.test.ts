import loadHighs from 'highs';
import { expect, test, vi } from 'vitest';
import { fitStrand, strandLimits } from '#core/fit/fit.ts';
import { searchOf } from '#core/fit/search.ts';
import { random, type Random } from '#tests/core/fit/random.ts';
import { lengthModel } from './highsFit.ts';
import { necklace, type Necklace } from './necklaces.ts';

// The thorough sizes take minutes.
vi.setConfig({ testTimeout: 3_600_000 });

const THOROUGH = process.env['CLASPWISE_THOROUGH'] !== undefined;

/** How many of them lie outside what can be made, all others compared. */
async function compared(
  necklaces: number,
  of: (seed: Random) => Necklace,
): Promise<{ readonly outside: number }> {
  const highs = await loadHighs();
  let outside = 0;
  for (let seed = 1; seed <= necklaces; seed += 1) {
    const from = random(seed);
    const { problem, measure, baseHundredths, eachHundredths } = of(from);
    const search = searchOf(problem, measure);
    const limits = strandLimits(search)!;
    const [least, most] = [limits.least.span.lowNm / 1e4, limits.most.span.highNm / 1e4];
    const target = from.whole(least, most);
    const tolerance = from.pick([0, 50, 300]);
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
  return { outside };
}

test('necklaces: the optimum of integer programming, preference after preference', async () => {
  const necklaces = THOROUGH ? 10_000 : 60;
  const { outside } = await compared(necklaces, (of) => necklace(of, of.whole(1, 6), 20));
  expect(outside).toBeLessThan(necklaces / 10);
});

test('many sections that share what is counted are answered too, and as well', async () => {
  const necklaces = THOROUGH ? 300 : 12;
  const { outside } = await compared(necklaces, (of) => necklace(of, of.whole(8, 14), 9, of.whole(1, 3)));
  expect(outside).toBeLessThan(necklaces / 2);
});
