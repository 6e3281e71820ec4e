import { describe, expect, test } from 'vitest';
import { lengthMeasure } from '#core/solver/measure.ts';
import { girthMeasure } from '#core/solver/girth.ts';
import { chainUsedMm } from '#core/sizing/chain.ts';
import { looseChainMm } from '#core/solver/measureOf.ts';
import { size } from '#core/sizing/size.ts';
import type { Candidate } from '#core/sizing/sizing.ts';
import type { Fitted } from '#core/design/choice.ts';
import { describe as describePiece } from '#core/sizing/usual.ts';
import type { Design } from '#core/design/design.ts';
import { withEnds } from '#core/design/swap.ts';
import { design, focalBracelet, rules, section, strand, tubeBracelet, ball } from '../designs.ts';
import { asking, ENDS_MM, plain, run, within } from './plain.ts';

const made = (piece: Design, counts: readonly (readonly number[])[]): Candidate =>
  describePiece(piece, rules, 4800, counts);

/** Every component weighs so much. */
const weighing = (piece: Design, massG: number): Design => ({
  ...piece,
  components: Object.fromEntries(Object.values(piece.components).map((one) => [one.id, { ...one, massG }])),
});

const best = (piece: Design, beadsMm: number, toleranceMm: number): Candidate => {
  const sizing = size(piece, within(toleranceMm), 4800, asking(ENDS_MM + beadsMm));
  if (sizing.status === 'refused') throw new Error(sizing.problem.code);
  return sizing.status === 'outside' ? sizing.nearest : sizing.best;
};

describe('a piece by its counts', () => {
  test('weighs what it is made of, and the wire along it', () => {
    const piece = weighing(plain([{ sections: [run('run', 'b6', [20, 10, 30])], mirrored: true }]), 0.5);
    // 50 beads, clasp, ring, two crimps, two covers at half a gram; 328 mm of wire at 0.6 g/m.
    expect(made(piece, [[25]]).massG).toBeCloseTo(28 + 0.1968, 9);
  });

  test('says what changed: both sides together, nothing where nothing did', () => {
    const piece = plain([
      {
        mirrored: true,
        sections: [
          section(
            'pairs',
            [
              { component: 'b6', count: 1 },
              { component: 'b2', count: 2 },
            ],
            [10, 5, 15],
          ),
          run('still', 'b3', [4, 4, 4]),
          run('few', 'b4', [3, 0, 5]),
        ],
      },
    ]);
    expect(made(piece, [[12, 4, 2]]).changes).toEqual([
      {
        strand: 0,
        section: 'pairs',
        from: 10,
        to: 12,
        parts: [
          { component: 'b6', count: 4 },
          { component: 'b2', count: 8 },
        ],
      },
      { strand: 0, section: 'few', from: 3, to: 2, parts: [{ component: 'b4', count: -2 }] },
    ]);
  });

  test('against no target: no error, within tolerance, the chain closed', () => {
    const chained = withEnds(plain([{ sections: [run('run', 'b6', [50, 40, 60])] }]), { extenderMm: 50 });
    expect(made(chained, [[45]])).toMatchObject({
      errorMm: 0,
      withinTolerance: true,
      chainUsedMm: 0,
      finishedLengthMm: ENDS_MM + 270,
    });
  });

  test('of several strands: the longest is its length, the first its fitted one, the least round its inside', () => {
    const piece = plain([
      { sections: [run('sixes', 'b6', [50, 40, 60])] },
      { sections: [run('eights', 'b8', [30, 30, 50])] },
      { sections: [run('threes', 'b3', [110, 90, 130])] },
    ]);
    const found = made(piece, [[50], [30], [110]]);
    expect(found).toMatchObject({ fittedMm: ENDS_MM + 300, finishedLengthMm: ENDS_MM + 330 });
    const alone = made({ ...piece, strands: [piece.strands[1]!] }, [[30]]);
    expect(found.insideGirthMm).toBe(alone.insideGirthMm);
    expect(made({ ...piece, kind: 'bracelet' }, [[50], [30], [110]]).fittedMm).toBe(alone.insideGirthMm);
  });
});

describe('against a target', () => {
  test('the error of one strand has a sign', () => {
    const sixes = plain([{ sections: [run('run', 'b6', [50, 40, 60])] }]);
    expect(best(sixes, 302, 3)).toMatchObject({ errorMm: -2, withinTolerance: true });
    expect(best(sixes, 298, 3)).toMatchObject({ errorMm: 2, withinTolerance: true });
    expect(best(sixes, 297, 1)).toMatchObject({ errorMm: 3, withinTolerance: false });
  });

  test('it counts what a chain is too short to make up for', () => {
    const chained = withEnds(plain([{ sections: [run('run', 'b6', [50, 40, 60])] }]), { extenderMm: 50 });
    expect(best(chained, 300.3, 1)).toMatchObject({ counts: [[50]], chainUsedMm: 0 });
    expect(best(chained, 300.3, 1).errorMm).toBeCloseTo(-0.3, 9);
    expect(best(chained, 301, 1)).toMatchObject({ counts: [[50]], chainUsedMm: 1 });
  });

  test('of several strands it is that of the one furthest off', () => {
    const two = plain([
      { sections: [run('sixes', 'b6', [50, 40, 60])] },
      { sections: [run('eights', 'b8', [40, 30, 50])] },
    ]);
    // 303: sixes 300, 3 short, cost nothing; eights 304, 1 over.
    expect(best(two, 303, 3)).toMatchObject({ counts: [[50], [38]], errorMm: -3 });
    const turned = { ...two, strands: two.strands.toReversed() };
    expect(best(turned, 303, 3)).toMatchObject({ counts: [[38], [50]], errorMm: -3 });
  });
});

describe('an extender chain', () => {
  const used = (piece: Design, counts: readonly number[], fitted: Fitted, targetMm: number): number => {
    const measure = (fitted === 'length' ? lengthMeasure : girthMeasure)(piece, 0, looseChainMm(piece));
    return chainUsedMm(piece, 0, counts, measure.of(counts), fitted, targetMm);
  };
  const sixes = withEnds(plain([{ sections: [run('run', 'b6', [50, 40, 60])] }]), { extenderMm: 50 });
  const bracelet = withEnds(focalBracelet, { extenderMm: 40 });
  const counts = [1, 5, 4, 1];
  const girthMm = made(focalBracelet, [counts]).insideGirthMm;

  test('along a length is let out by what is missing, no less than half a millimetre, no more than there is', () => {
    const lets = [327, 328, 328.4, 328.6, 350, 378, 400].map((mm) => used(sixes, [50], 'length', mm));
    expect(lets.map((mm) => Math.round(mm * 1e6) / 1e6)).toEqual([0, 0, 0, 0.6, 22, 50, 50]);
  });

  test('round a wrist is let out until the girth is met', () => {
    expect(used(bracelet, counts, 'girth', girthMm - 1)).toBe(0);
    expect(used(bracelet, counts, 'girth', girthMm + 60)).toBe(40);
    const out = used(bracelet, counts, 'girth', girthMm + 20);
    expect(out).toBeGreaterThan(15);
    expect(out).toBeLessThan(25);
    const sizing = size(bracelet, within(1), 4800, {
      ...asking(0),
      measure: { of: 'wrist', mm: girthMm + 20 - rules.easeMm.bracelet.easy },
    });
    expect(sizing).toMatchObject({
      status: 'fits',
      best: { counts: [counts], chainUsedMm: out, insideGirthMm: expect.closeTo(girthMm + 20, 5) as number },
    });
  });

  test('round a wrist less than half a millimetre can’t be let out', () => {
    expect(used(bracelet, counts, 'girth', girthMm + 0.01)).toBe(0);
  });

  test('is not there to be let out where there is none, or several strands share it', () => {
    expect(used(focalBracelet, counts, 'girth', girthMm + 5)).toBe(0);
    expect(looseChainMm(tubeBracelet)).toBe(0);
    expect(looseChainMm(bracelet)).toBe(40);
    const two = { ...bracelet, strands: [bracelet.strands[0]!, { ...bracelet.strands[0]!, id: 'other' }] };
    expect(looseChainMm(two)).toBe(0);
  });
});

describe('a stock', () => {
  const beads = [ball('b6', 6)];
  const one = design(
    'necklace',
    [strand('s', [section('run', [{ component: 'b6', count: 1 }], [40, 40, 60])], false)],
    beads,
  );
  const counted = (id: string, stock: number): Design => ({
    ...one,
    components: { ...one.components, [id]: { ...one.components[id]!, stock } },
  });
  const asked = (piece: Design, quantity: number): unknown =>
    size(piece, within(1), 4800, asking(ENDS_MM + 240, { quantity }));

  test.each([
    ['clasp', 3, 3],
    ['crimp', 6, 6],
    ['b6', 120, 120],
  ])('of %s that is just enough for three pieces is enough', (id, have, need) => {
    expect(asked(counted(id, have), 3)).toMatchObject({ status: 'fits' });
    expect(asked(counted(id, have - 1), 3)).toEqual({
      status: 'refused',
      problem: { code: 'stock', component: id, have: have - 1, need },
    });
  });
});
