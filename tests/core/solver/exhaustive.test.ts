import { expect, test } from 'vitest';
import { fitJointly } from '#core/solver/fit.ts';
import { jointLimits } from '#core/solver/limits.ts';
import { toNm } from '#core/solver/outcome.ts';
import { jobOf } from '#core/sizing/job.ts';
import type { Fitted } from '#core/design/choice.ts';
import { bestOf, nearestOf, tryAll, type Tried } from '#tests/judges/exhaustive.ts';
import { rules } from '../designs.ts';
import { random, randomDesign } from '../random.ts';

const DESIGNS = process.env['CLASPWISE_THOROUGH'] ? 5000 : process.env['CLASPWISE_QUICK'] ? 100 : 300;

type Compared = { fits: number; near: number; outside: number };

/** Fits one random design for several targets, and counts what each answer said. */
function compare(seed: number, fitted: Fitted, compared: Compared): void {
  const of = random(seed);
  const design = randomDesign(of, fitted === 'length' ? 'necklace' : 'bracelet', { sections: 3, repeats: 5 });
  const all = tryAll(design, fitted);
  const toleranceMm = of.pick([0, 0.5, 1.5, 3]);
  const { joint } = jobOf(design, rules, 1);
  const limits = jointLimits(joint, (_, nm) => nm);
  if (all.length === 0) {
    expect(limits).toBeNull();
    return;
  }
  const leastMm = Math.min(...all.map((tried) => tried.leastMm));
  const mostMm = Math.max(...all.map((tried) => tried.mostMm));
  expect(limits!.least.firstNm).toBeCloseTo(toNm(leastMm), -4);
  expect(limits!.most.firstNm).toBeCloseTo(toNm(mostMm), -4);
  /** As the solver counts it: the link of a chain after the sections. */
  const counted = (tried: Tried | undefined): readonly number[] | undefined =>
    tried && [...tried.counts, ...tried.link];
  for (let round = 0; round < 4; round += 1) {
    const targetMm = Math.round((leastMm - 5 + of.next() * (mostMm - leastMm + 10)) * 100) / 100;
    const fit = fitJointly(joint, [{ targetNm: toNm(targetMm), toleranceNm: toNm(toleranceMm) }])!;
    const best = bestOf(design, all, targetMm, toleranceMm)!;
    expect(fit.best[0]!.counts, `seed ${seed} target ${targetMm}`).toEqual(counted(best));
    compared[fit.status] += 1;
    if (fit.status !== 'near') continue;
    expect(fit.below[0]!.counts, `seed ${seed} below`).toEqual(
      counted(nearestOf(design, all, targetMm, 'below')),
    );
    expect(fit.above[0]!.counts, `seed ${seed} above`).toEqual(
      counted(nearestOf(design, all, targetMm, 'above')),
    );
  }
}

test.each(['length', 'girth'] as const)('%s: the same answer as trying every choice', (fitted) => {
  const compared: Compared = { fits: 0, near: 0, outside: 0 };
  for (let seed = 1; seed <= DESIGNS; seed += 1) compare(seed, fitted, compared);
  // Four targets a design, but for the few that the stock doesn't reach for.
  expect(compared.fits + compared.near + compared.outside).toBeGreaterThan(3.8 * DESIGNS);
  for (const count of Object.values(compared)) expect(count).toBeGreaterThan(0.2 * DESIGNS);
});
