import { expect, test } from 'vitest';
import { solveLoop, type Part } from '#core/geometry/loop.ts';
import { verifyLoop } from '#core/verify/loop.ts';
import { random, randomBead, type Random } from '#tests/core/random.ts';
import { barrierRadius } from './barrierLoop.ts';
import { closingRadii } from './fixedPoints.ts';

const THOROUGH = process.env['CLASPWISE_THOROUGH'] !== undefined;
const STRANDS = THOROUGH ? 1000 : 40;
const VERIFIED = THOROUGH ? 20_000 : 2000;
const RINGS = THOROUGH ? 20_000 : 120;
/** Starts of the judge for each ring. */
const STARTS = 5;

/** A strand as one meets them: runs of a few kinds, now and then a large one, closed by a clasp. All of them close. */
function randomParts(of: Random, most: number): Part[] {
  const kinds = Array.from({ length: of.whole(1, 5) }, (_, at) => randomBead(of, `${at}`));
  if (of.next() < 0.4) kinds.push({ ...kinds[0]!, alongMm: 22, acrossMm: 22, roundingMm: 11 });
  const clasp = { alongMm: 12, acrossMm: 6, roundingMm: 1 };
  const count = of.whole(8, most);
  return [...Array.from({ length: count }, () => of.pick(kinds)), clasp];
}

/** A ring that no shop would string: three to eight parts, anything from a rod to a plate. */
function oddRing(of: Random): Part[] {
  const kinds = Array.from({ length: of.whole(1, 4) }, () => {
    const [alongMm, acrossMm] = [of.whole(5, 300) / 10, of.whole(5, 300) / 10];
    return { alongMm, acrossMm, roundingMm: (Math.min(alongMm, acrossMm) / 2) * of.pick([0, 0.25, 0.5, 1]) };
  });
  return Array.from({ length: of.whole(3, 8) }, () => of.pick(kinds));
}

test('every strand closes, as large as an interior-point method makes it', () => {
  for (let seed = 1; seed <= STRANDS; seed += 1) {
    const parts = randomParts(random(seed), 32);
    const loop = solveLoop(parts);
    expect(loop.closes, `seed ${seed}`).toBe(true);
    const judged = 2 * Math.PI * barrierRadius(parts, loop.radiusMm * 1.1);
    expect(Math.abs(judged - loop.insideGirthMm), `seed ${seed}`).toBeLessThan(0.005);
  }
});

test('every strand closes, and lies as the definition says', () => {
  for (let seed = 1; seed <= VERIFIED; seed += 1) {
    const parts = randomParts(random(seed), 80);
    const loop = solveLoop(parts);
    expect(loop.closes, `seed ${seed}`).toBe(true);
    expect(verifyLoop(parts, loop), `seed ${seed}`).toEqual([]);
  }
});

test('an odd ring closes where there is a loop that keeps its turns, at its radius, and only there', () => {
  let closed = 0;
  let judged = 0;
  for (let seed = 1; seed <= RINGS; seed += 1) {
    const of = random(seed);
    const parts = oddRing(of);
    const loop = solveLoop(parts);
    const radii = closingRadii(parts, of, STARTS);
    const said = `seed ${seed}`;
    if (loop.closes) closed += 1;
    else expect(radii, said).toEqual([]);
    expect(verifyLoop(parts, loop), said).toEqual([]);
    expect(radii.length, said).toBeLessThanOrEqual(1);
    for (const radiusMm of radii) {
      judged += 1;
      expect(Math.abs(radiusMm - loop.radiusMm), said).toBeLessThan(1e-7);
    }
  }
  // The others hold a part too wide or too long for the rest.
  expect(closed).toBeGreaterThan(0.9 * RINGS);
  // From some starts the judge doesn't come to rest.
  expect(judged).toBeGreaterThan(0.98 * closed);
});
