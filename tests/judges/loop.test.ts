import { expect, test } from 'vitest';
import { solveLoop, type Part } from '#core/geometry/loop.ts';
import { verifyLoop } from '#core/verify/loop.ts';
import { random, randomBead, type Random } from '#tests/core/random.ts';
import { barrierRadius } from './barrierLoop.ts';

const STRANDS = process.env['CLASPWISE_THOROUGH'] ? 1000 : 60;
const VERIFIED = process.env['CLASPWISE_THOROUGH'] ? 20_000 : 3000;

/** A strand as one meets them: runs of a few kinds, now and then a large one, closed by a clasp. */
function randomParts(of: Random, most: number): Part[] {
  const kinds = Array.from({ length: of.whole(1, 5) }, (_, at) => randomBead(of, `${at}`));
  if (of.next() < 0.4) kinds.push({ ...kinds[0]!, alongMm: 22, acrossMm: 22, roundingMm: 11 });
  const clasp = { alongMm: 12, acrossMm: 6, roundingMm: 1 };
  const count = of.whole(8, most);
  return [...Array.from({ length: count }, () => of.pick(kinds)), clasp];
}

test('the loop is as large as an interior-point method makes it', () => {
  let worstMm = 0;
  for (let seed = 1; seed <= STRANDS; seed += 1) {
    const parts = randomParts(random(seed), 32);
    const loop = solveLoop(parts);
    if (!loop.closes) continue;
    const judged = 2 * Math.PI * barrierRadius(parts, loop.radiusMm * 1.1);
    worstMm = Math.max(worstMm, Math.abs(judged - loop.insideGirthMm));
    expect(judged, `seed ${seed}`).toBeCloseTo(loop.insideGirthMm, 2);
  }
  expect(worstMm).toBeLessThan(0.01);
});

test('every loop lies as its definition says', () => {
  for (let seed = 1; seed <= VERIFIED; seed += 1) {
    const parts = randomParts(random(seed), 80);
    const loop = solveLoop(parts);
    expect(verifyLoop(parts, loop), `seed ${seed}`).toEqual([]);
  }
});
