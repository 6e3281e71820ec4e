/** Strands that draw on one stock: the answer is the best of every choice for the whole piece. */
import { expect, test } from 'vitest';
import type { Choice } from '#core/design/choice.ts';
import type { Design } from '#core/design/design.ts';
import { range } from '#core/sizing/range.ts';
import { size } from '#core/sizing/size.ts';
import type { Rules } from '#core/design/rules.ts';
import { rules as usualRules, strict } from '#tests/core/designs.ts';
import { random, randomContested, type Random } from '#tests/core/random.ts';
import { mapComponents } from '#tests/support/blank.ts';
import { verifySizing } from '#core/verify/sizing.ts';
import { everyPiece, judgedBy, limitsBy } from './everyPiece.ts';

const PIECES = process.env['CLASPWISE_THOROUGH'] ? 5000 : process.env['CLASPWISE_QUICK'] ? 100 : 160;

/** Noise of sums of lengths, where the judge adds millimetres and the solver nanometres. */
const ROUNDING_MM = 1e-6;

const NONE: Choice = {
  measure: { of: 'length', mm: 400 },
  sit: 'easy',
  hand: 'right',
  pick: 'best',
  quantity: 1,
};

const asking = (design: Design, mm: number): Choice => ({
  ...NONE,
  measure: { of: design.kind === 'necklace' ? 'length' : 'wrist', mm },
});

/** What is asked of a body for the piece to measure so much. */
const askedFor = (design: Design, targetMm: number): number =>
  design.kind === 'necklace' ? targetMm : targetMm - usualRules.easeMm[design.kind].easy;

/** Compares one piece with the judge; what the sizing said. */
function judged(of: Random, design: Design, seed: number): string {
  const rules: Rules = of.pick([usualRules, usualRules, strict]);
  const all = everyPiece(design, 1);
  const said = `seed ${seed}`;
  const known = range(design, rules);
  if (all.length === 0) {
    expect(known, said).toMatchObject({ status: 'refused', problem: { code: 'stock' } });
    return 'stock';
  }
  const toleranceMm = rules.toleranceMm[design.kind];
  const [leastMm, mostMm] = limitsBy(design, all);
  if (leastMm - mostMm > 2 * toleranceMm) {
    expect(known, said).toMatchObject({ status: 'refused', problem: { code: 'strands-apart' } });
    if (known.status !== 'refused' || known.problem.code !== 'strands-apart') return 'apart';
    const ample = mapComponents(design, (one) => ({ ...one, stock: null }));
    const [least, most] = limitsBy(ample, everyPiece(ample, 1));
    // A bead is blamed where more of it would help, and only there.
    expect(known.problem.short.length > 0, said).toBe(least - most <= 2 * toleranceMm + ROUNDING_MM);
    return 'apart';
  }
  if (known.status === 'refused') throw new Error(`${said}: ${known.problem.code}`);
  // Compared in whole hundredths, the preferred of two alike is told.
  expect(Math.abs(known.limits.leastMm - leastMm), said).toBeLessThan(0.01);
  expect(Math.abs(known.limits.mostMm - mostMm), said).toBeLessThan(0.01);
  const [from, to] = [Math.min(leastMm, mostMm), Math.max(leastMm, mostMm)];
  const mm = Math.round((askedFor(design, from) + (1.3 * of.next() - 0.15) * (to - from)) * 10) / 10;
  const sizing = size(design, rules, 4800, asking(design, mm));
  if (sizing.status === 'refused') return 'refused';
  const { targetMm } = sizing;
  const wanted = judgedBy(design, all, targetMm, toleranceMm)!;
  const found =
    sizing.status === 'outside'
      ? { status: sizing.status, best: sizing.nearest.counts }
      : {
          status: sizing.status,
          best: sizing.best.counts,
          below: sizing.below?.counts ?? null,
          above: sizing.above?.counts ?? null,
        };
  expect(found, said).toEqual(
    sizing.status === 'outside' ? { status: wanted.status, best: wanted.best } : wanted,
  );
  if (seed % 4 === 0) expect(verifySizing(design, sizing), said).toEqual([]);
  // At an edge of the range rounding decides.
  const edge = known.intervals.some(
    ({ fromMm, toMm }) => Math.min(Math.abs(fromMm - targetMm), Math.abs(toMm - targetMm)) < 0.011,
  );
  const inside = known.intervals.some(({ fromMm, toMm }) => targetMm > fromMm && targetMm < toMm);
  if (!edge) expect(inside, said).toBe(sizing.status === 'fits');
  return sizing.status;
}

test('of every choice written out', () => {
  const seen: Record<string, number> = {};
  for (let seed = 1; seed <= PIECES; seed += 1) {
    const of = random(seed);
    const said = judged(of, randomContested(of), seed);
    seen[said] = (seen[said] ?? 0) + 1;
  }
  // Each kind of answer, and hardly any piece that has none.
  expect(seen['fits']).toBeGreaterThan(PIECES / 5);
  expect(seen['near']).toBeGreaterThan(PIECES / 20);
  expect(seen['outside']).toBeGreaterThan(PIECES / 20);
  expect(seen['refused'] ?? 0).toBeLessThan(PIECES / 20);
});
