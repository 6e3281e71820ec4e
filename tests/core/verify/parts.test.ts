import { describe, expect, test } from 'vitest';
import { verifyCandidate } from '#core/verify/candidate.ts';
import { girthByRelaxing } from '#core/verify/girth.ts';
import { verifierParts } from '#core/verify/parts.ts';
import { solveLoop } from '#core/geometry/loop.ts';
import { expand } from '#core/design/expand.ts';
import { loopParts } from '#core/design/loopParts.ts';
import { size } from '#core/sizing/size.ts';
import { focalBracelet, rules } from '../designs.ts';
import { random, randomDesign } from '../random.ts';

describe('the verifier lays out and measures by its own code', () => {
  const designs = Array.from({ length: 60 }, (_, seed) =>
    randomDesign(random(seed + 1), 'bracelet', { sections: 3, repeats: 6 }),
  );

  test.each(designs.map((design, at) => [at, design] as const))('random design %i', (_, design) => {
    const strand = design.strands[0]!;
    const counts = strand.sections.map((section) => section.usual);
    const { extenderMm, linkMm } = design.ends;
    const halfMm = linkMm === undefined ? extenderMm / 2 : linkMm * Math.floor(extenderMm / linkMm / 2);
    for (const chainMm of [0, halfMm]) {
      const parts = verifierParts(design, strand, counts, chainMm);
      expect(parts).toEqual(loopParts(design, expand(design, [counts])[0]!, chainMm));
      const solved = solveLoop(parts);
      expect(Math.abs(girthByRelaxing(parts) - solved.insideGirthMm)).toBeLessThan(1e-3);
    }
  });

  test('twelve balls of 10 mm leave a girth of π·10·(1/sin 15° − 1)', () => {
    const balls = Array.from({ length: 12 }, () => ({ alongMm: 10, acrossMm: 10, roundingMm: 5 }));
    expect(girthByRelaxing(balls)).toBeCloseTo(Math.PI * 10 * (1 / Math.sin(Math.PI / 12) - 1), 3);
  });

  test('two parts, and a loop too short for its fattest part, pass round nothing', () => {
    const ball = { alongMm: 10, acrossMm: 10, roundingMm: 5 };
    expect(girthByRelaxing([ball, ball])).toBe(0);
    const disc = { alongMm: 2, acrossMm: 60, roundingMm: 0 };
    expect(solveLoop([disc, ball, ball]).closes).toBe(false);
    expect(girthByRelaxing([disc, ball, ball])).toBe(0);
  });

  test('a loop wrongly said not to close, and a girth a fiftieth of a millimetre off, are caught', () => {
    const sizing = size(focalBracelet, rules, 4800, {
      measure: { of: 'wrist', mm: 165 },
      sit: 'easy',
      hand: 'right',
      pick: 'best',
      quantity: 1,
    });
    if (sizing.status === 'refused' || sizing.status === 'outside') throw new Error('a piece was expected');
    const { best } = sizing;
    const codes = (insideGirthMm: number): string[] =>
      verifyCandidate(focalBracelet, { ...best, insideGirthMm }, 1).map(({ code }) => code);
    expect(codes(best.insideGirthMm)).toEqual([]);
    expect(codes(0)).toEqual(['loop', 'girth']);
    expect(codes(best.insideGirthMm + 0.02)).toEqual(['girth']);
  });
});
