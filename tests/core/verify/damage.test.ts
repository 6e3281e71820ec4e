/** What the verifier makes of answers with one thing wrong, told apart from everything else it looks at. */
import { describe, expect, test } from 'vitest';
import { verifySizing } from '#core/verify/sizing.ts';
import type { Choice } from '#core/design/choice.ts';
import type { Rules } from '#core/design/rules.ts';
import { size } from '#core/sizing/size.ts';
import type { Candidate, Sizing } from '#core/sizing/sizing.ts';
import type { Design } from '#core/design/design.ts';
import { withEnds } from '#core/design/swap.ts';
import { asking, ENDS_MM, plain, run, within } from '../sizing/plain.ts';
import { choose } from './answers.ts';
import { focalBracelet, rules } from '../designs.ts';

type Fits = Extract<Sizing, { status: 'fits' | 'near' }>;
type Outside = Extract<Sizing, { status: 'outside' }>;

const sized = (design: Design, by: Rules, choice: Choice): Fits => {
  const sizing = size(design, by, 4800, choice);
  if (sizing.status !== 'fits' && sizing.status !== 'near') throw new Error(`it is ${sizing.status}`);
  return sizing;
};

const outside = (design: Design, by: Rules, choice: Choice): Outside => {
  const sizing = size(design, by, 4800, choice);
  if (sizing.status !== 'outside') throw new Error(`it is ${sizing.status}`);
  return sizing;
};

const codes = (design: Design, sizing: Sizing): string[] =>
  verifySizing(design, sizing).map(({ code, at }) => `${code} ${at}`);

/** The answer with its best piece, which is the chosen one too, changed. */
const withBest = (sizing: Fits, over: Partial<Candidate>): Fits => {
  const best = { ...sizing.best, ...over };
  return { ...sizing, best, chosen: best };
};

const sixes = plain([{ sections: [run('run', 'b6', [50, 40, 60])] }]);
const chained = withEnds(sixes, { extenderMm: 50 });
const two = plain([
  { sections: [run('sixes', 'b6', [50, 40, 60])] },
  { sections: [run('eights', 'b8', [40, 30, 50])] },
]);
const at = (beadsMm: number): Choice => asking(ENDS_MM + beadsMm);

describe('an error', () => {
  test('of the wrong sign, or off together with the measure', () => {
    const sizing = sized(sixes, within(3), at(302));
    expect(codes(sixes, sizing)).toEqual([]);
    expect(codes(sixes, withBest(sizing, { errorMm: 2 }))).toEqual(['error fits', 'error fits']);
    const { fittedMm, errorMm } = sizing.best;
    const moved = withBest(sizing, { fittedMm: fittedMm + 0.3, errorMm: errorMm + 0.3 });
    expect(codes(sixes, moved)).toContain('error fits');
  });

  test('of less than half a millimetre is a chain’s to leave, and nothing else’s', () => {
    const left = sized(chained, within(1), at(300.3));
    expect(left.best.errorMm).toBeCloseTo(-0.3, 9);
    expect(codes(chained, left)).toEqual([]);
    const both = sized(withEnds(two, { extenderMm: 50 }), within(3), at(303));
    expect(codes(withEnds(two, { extenderMm: 50 }), both)).toEqual([]);
    const moved = withBest(both, { errorMm: both.best.errorMm + 0.3 });
    expect(codes(withEnds(two, { extenderMm: 50 }), moved)).toEqual(['error fits', 'error fits']);
  });
});

describe('a chain of known links', () => {
  const linked = withEnds(sixes, { extenderMm: 48, linkMm: 4 });
  const sizing = sized(linked, within(3), at(329));

  test('closes in the nearest of them', () => {
    expect(sizing.best).toMatchObject({ counts: [[50]], chainUsedMm: 28, errorMm: -1 });
    expect(codes(linked, sizing)).toEqual([]);
  });

  test('not between two, nor in one that is further off', () => {
    const moved = (mm: number): Fits => {
      const { best } = sizing;
      const figures = {
        chainUsedMm: best.chainUsedMm + mm,
        fittedMm: best.fittedMm + mm,
        finishedLengthMm: best.finishedLengthMm + mm,
        errorMm: best.errorMm + mm,
      };
      return withBest(sizing, { ...figures, withinTolerance: Math.abs(figures.errorMm) <= 3 });
    };
    expect(codes(linked, moved(1))).toContain('chain piece');
    expect(codes(linked, moved(4))).toContain('chain fits');
    expect(codes(linked, moved(-4))).toContain('chain fits');
  });
});

describe('a tolerance', () => {
  test('exactly met', () => {
    const sizing = sized(sixes, within(2), at(302));
    expect(sizing.best).toMatchObject({ errorMm: -2, withinTolerance: true });
    expect(codes(sixes, sizing)).toEqual([]);
  });

  test('of several strands is met by the furthest off or not at all', () => {
    const sizing = sized(two, within(1), at(303));
    expect(sizing).toMatchObject({ status: 'near', best: { withinTolerance: false } });
    expect(codes(two, sizing)).toEqual([]);
    expect(codes(two, withBest(sizing, { withinTolerance: true }))).toContain('tolerance near');
  });
});

describe('a better piece next door', () => {
  const better = (design: Design, sizing: Fits): string[] =>
    codes(design, sizing).filter((code) => code.startsWith('better'));

  test('with a repeat more, or one less', () => {
    const sizing = sized(sixes, within(1), at(300));
    expect(better(sixes, withBest(sizing, { counts: [[49]] }))).toEqual(['better strands.0']);
    expect(better(sixes, withBest(sizing, { counts: [[51]] }))).toEqual(['better strands.0']);
  });

  test('as near as need be, and changing less', () => {
    const sizing = sized(sixes, within(6), at(300));
    expect(better(sixes, withBest(sizing, { counts: [[51]] }))).toEqual(['better strands.0']);
  });

  test('is none where it only costs as little', () => {
    const free = plain([{ sections: [{ ...run('run', 'b6', [50, 40, 60]), cost: 0 }] }]);
    const sizing = sized(free, within(9), at(300));
    expect(codes(free, sizing)).toEqual([]);
    expect(better(free, withBest(sizing, { counts: [[51]] }))).toEqual([]);
  });

  test('of the piece offered on the other side', () => {
    const sizing = sized(sixes, within(1), at(302));
    const { below, above } = sizing;
    expect(sizing.best.counts).toEqual(below!.counts);
    expect(better(sixes, withBest(sizing, { ...above! }))).toEqual(['better strands.0', 'better near']);
  });
});

describe('the pieces on either side', () => {
  const near = sized(sixes, within(1), at(302));
  const { below, above } = near;

  test('changed places', () => {
    expect(codes(sixes, { ...near, below: above })).toEqual(['side strands.0']);
    expect(codes(sixes, { ...near, above: below })).toEqual(['side strands.0']);
  });

  test('missing is no fault by itself', () => {
    expect(codes(sixes, { ...near, below: null })).toEqual([]);
    expect(codes(sixes, { ...near, above: null })).toEqual([]);
  });

  test('of several strands, those within tolerance lie where they like', () => {
    const sizing = sized(two, within(1), at(303));
    expect(sizing.below!.counts).not.toEqual(sizing.above!.counts);
    expect(codes(two, { ...sizing, below: sizing.above })).toEqual(['side strands.0']);
  });
});

describe('a limit', () => {
  const sizing = sized(focalBracelet, rules, choose('wrist', 165));

  test('that the piece lies beyond', () => {
    const { leastMm, mostMm } = sizing.limits;
    for (const fittedMm of [leastMm - 1, mostMm + 1]) {
      expect(codes(focalBracelet, withBest(sizing, { fittedMm }))).toContain('limits fits');
    }
    const least = outside(sixes, within(1), at(230));
    expect(least.nearest.fittedMm).toBe(least.limits.leastMm);
    expect(codes(sixes, least)).toEqual([]);
    const most = outside(sixes, within(1), at(900));
    expect(most.nearest.fittedMm).toBe(most.limits.mostMm);
    expect(codes(sixes, most)).toEqual([]);
  });

  test('that the wanted size lies beyond, on the side that is told', () => {
    const least = outside(sixes, within(1), at(230));
    expect(codes(sixes, { ...least, side: 'above' })).toEqual(['side outside']);
    const most = outside(sixes, within(1), at(900));
    expect(codes(sixes, { ...most, side: 'below' })).toEqual(['side outside']);
    const heavy = { ...most.nearest, massG: most.nearest.massG + 1 };
    expect(codes(sixes, { ...most, nearest: heavy })).toEqual(['mass piece']);
  });

  test('of a stock may come before the range’s, not after', () => {
    const scarce = plain([{ sections: [run('run', 'b6', [50, 40, 60])] }], { b6: 55 });
    const answer = sized(scarce, within(1), at(300));
    expect(answer.limits).toMatchObject({ mostMm: ENDS_MM + 330, mostStock: ['b6'] });
    expect(codes(scarce, answer)).toEqual([]);
    const moved = (byMm: number): Fits => {
      const { mostMm, mostAskedMm } = answer.limits;
      const limits = { ...answer.limits, mostMm: mostMm + byMm, mostAskedMm: mostAskedMm + byMm };
      return { ...answer, limits };
    };
    expect(codes(scarce, moved(30))).toEqual([]);
    expect(codes(scarce, moved(31))).toEqual(['limits fits']);
  });
});

test('a refusal has nothing to judge', () => {
  expect(verifySizing(sixes, size(sixes, rules, 4800, asking(-1)))).toEqual([]);
});
