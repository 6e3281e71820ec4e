/** What the verifier makes of one piece with one thing wrong, and of pieces with everything a piece may have. */
import { describe, expect, test } from 'vitest';
import { allowed, boundsOf, checkStock, verifyCandidate } from '#core/verify/candidate.ts';
import { costOfCounts, verifierParts } from '#core/verify/parts.ts';
import { offMm, spanMm, worstOf } from '#core/verify/strand.ts';
import { evaluate } from '#core/solver/outcome.ts';
import { fitProblem } from '#core/solver/problem.ts';
import type { Candidate, Change } from '#core/sizing/sizing.ts';
import { describe as describePiece, usual } from '#core/sizing/usual.ts';
import type { Design } from '#core/design/design.ts';
import { expand } from '#core/design/expand.ts';
import { loopParts } from '#core/design/loopParts.ts';
import { withEnds, withHanging } from '#core/design/swap.ts';
import { ball, component, design, rules, section, strand, stocked } from '../designs.ts';
import { random, randomDesign } from '../random.ts';

const one = (id: string) => [{ component: id, count: 1 }];

/** A pendant on two rings, guards in its loops, sections of two components, six of one and four of another. */
const hung: Design = design(
  'necklace',
  [
    strand('only', [
      section('pairs', [...one('six'), ...one('three')], [3, 1, 6]),
      section('run', one('four'), [2, 0, 5]),
    ]),
  ],
  [
    ...[ball('six', 6), ball('four', 4), ball('three', 3)].map((bead) => ({ ...bead, massG: 0.3 })),
    component('drop', { kind: 'pendant', alongMm: 4, hangMm: 20, massG: 5 }),
    component('jump', { kind: 'ring', alongMm: 3, massG: 0.25 }),
    component('guard', { kind: 'spacer', alongMm: 4, acrossMm: 1, massG: 0.1 }),
  ],
  { hanging: { pendant: 'drop', rings: ['jump', 'jump'] } },
);
const guarded = withEnds(hung, { guard: 'guard' });

const made = (piece: Design, counts = usual(piece)): Candidate => describePiece(piece, rules, 4800, counts);

const codes = (piece: Design, candidate: Candidate): string[] =>
  verifyCandidate(piece, candidate, 1).map(({ code, at }) => `${code} ${at}`);

describe('pieces with everything a piece may have are accepted, and what is missing from them is missed', () => {
  test.each<[string, Design]>([
    ['a pendant on two rings', hung],
    ['guards in the loops', guarded],
    ['no cover over the crimp', withEnds(guarded, { cover: null })],
    ['no ring', withEnds(hung, { ring: null })],
    ['no pendant', withHanging(guarded, null)],
    ['one run', { ...hung, strands: [{ ...hung.strands[0]!, mirrored: false }] }],
    ['a chain', withEnds(hung, { extenderMm: 40 })],
  ])('%s', (_, piece) => {
    const candidate = made(piece, [[4, 1]]);
    expect(codes(piece, candidate)).toEqual([]);
    expect(codes(piece, { ...candidate, massG: candidate.massG - 0.1 })).toEqual(['mass piece']);
    expect(codes(piece, { ...candidate, finishedLengthMm: candidate.finishedLengthMm + 0.1 })).toEqual([
      'length piece',
    ]);
    const strung = candidate.sequences[0]!;
    const altered = (sequence: typeof strung): string[] =>
      codes(piece, { ...candidate, sequences: [sequence] });
    expect(altered(strung.slice(0, -1))).toEqual(['sequence strands.0']);
    const middle = 4;
    const bead = strung[middle]!;
    const wrong: Partial<typeof bead>[] = [
      { component: { ...bead.component, id: 'another' } },
      { section: 'another' },
      { side: bead.side === 'left' ? 'right' : 'left' },
      { covered: true },
    ];
    for (const over of wrong) {
      expect(altered(strung.with(middle, { ...bead, ...over }))).toEqual(['sequence strands.0']);
    }
    const { covered: _hidden, ...crimp } = strung[0]!;
    const hidden = piece.ends.cover === null ? { ...crimp, covered: true as const } : crimp;
    expect(altered(strung.with(0, hidden))).toEqual(['sequence strands.0']);
  });

  test('what closes round nothing, said to', () => {
    const wheel = component('wheel', { alongMm: 5, acrossMm: 90, roundingMm: 0 });
    const open = design('bracelet', [strand('only', [section('run', one('wheel'), [1, 0, 40])])], [wheel]);
    const candidate = made(open);
    expect(candidate.insideGirthMm).toBe(0);
    expect(codes(open, candidate)).toEqual([]);
    expect(codes(open, { ...candidate, insideGirthMm: 1e-4 })).toEqual(['loop piece']);
  });

  test('a chain let out beyond its length, backwards, or of several strands', () => {
    const piece = withEnds(hung, { extenderMm: 40 });
    const out = (of: Design, chainUsedMm: number): boolean =>
      codes(of, { ...made(of), chainUsedMm }).includes('chain piece');
    expect([-1, 0, 40, 41].map((mm) => out(piece, mm))).toEqual([true, false, false, true]);
    const two = { ...piece, strands: [...piece.strands, ...piece.strands] };
    expect([0, 5].map((mm) => out(two, mm))).toEqual([false, true]);
  });
});

describe('changes', () => {
  const candidate = made(hung, [[4, 1]]);
  const [pairs, few] = candidate.changes as readonly [Change, Change];

  test.each<[string, readonly Change[]]>([
    ['left out', [pairs]],
    ['from another count', [{ ...pairs, from: 2 }, few]],
    ['to another count', [{ ...pairs, to: 5 }, few]],
    ['of another section', [{ ...pairs, section: 'run' }, few]],
    ['of another strand', [{ ...pairs, strand: 1 }, few]],
    ['with a component short', [{ ...pairs, parts: pairs.parts.slice(1) }, few]],
    ['with one too many', [pairs, { ...few, parts: [{ component: 'four', count: -3 }] }]],
  ])('%s', (_, changes) => {
    expect(codes(hung, { ...candidate, changes })).toEqual(['changes piece']);
  });

  test('that change nothing', () => {
    const still = made(hung);
    const none: Change = { strand: 0, section: 'run', from: 2, to: 2, parts: [] };
    expect(codes(hung, { ...still, changes: [none] })).toEqual(['changes piece']);
  });
});

describe('a stock', () => {
  /** What one piece takes of each of its components. */
  const takes = {
    six: 6,
    three: 6,
    four: 4,
    clasp: 1,
    ring: 1,
    crimp: 2,
    cover: 2,
    guard: 2,
    drop: 1,
    jump: 2,
  };

  test.each(Object.entries(takes))('%s: %i are enough for one piece, twice as many for two', (id, count) => {
    const has = (have: number, pieces: number): boolean =>
      checkStock(stocked(guarded, { [id]: have }), { counts: usual(guarded) }, pieces);
    expect([has(count, 1), has(count - 1, 1)]).toEqual([true, false]);
    expect([has(2 * count, 2), has(2 * count - 1, 2)]).toEqual([true, false]);
  });

  test('of what isn’t there is not asked for', () => {
    const bare = withEnds(withHanging(hung, null), { cover: null, ring: null });
    const none = stocked(bare, { cover: 0, ring: 0, guard: 0, drop: 0, jump: 0 });
    expect(checkStock(none, { counts: usual(bare) }, 1)).toBe(true);
  });
});

describe('counts', () => {
  const [only] = hung.strands as readonly [Design['strands'][0]];

  test('are whole, as many as sections, from fewest to most; of a focal its usual one', () => {
    expect(allowed(only, [1, 0])).toBe(true);
    expect(allowed(only, [6, 5])).toBe(true);
    for (const counts of [[0, 0], [7, 0], [1, 6], [1], [1, 0, 0], [1.5, 0], undefined]) {
      expect(allowed(only, counts)).toBe(false);
    }
    expect(boundsOf(section('x', [], [2, 0, 4]))).toEqual([0, 4]);
    expect(boundsOf(section('x', [], [2, 0, 4], 'focal'))).toEqual([2, 2]);
  });

  test('cost what the fit says they do', () => {
    for (let seed = 1; seed <= 60; seed += 1) {
      const of = random(seed);
      const piece = randomDesign(of, 'necklace', { sections: 5, repeats: 6 });
      const found = piece.strands[0]!;
      const counts = found.sections.map(({ fewest, most }) => of.whole(fewest, most));
      const problem = fitProblem(found, new Map());
      const { cost } = evaluate(problem, { targetNm: 0, toleranceNm: 0 }, counts, { lowNm: 0, highNm: 0 });
      expect(costOfCounts(found, counts), `seed ${seed}`).toBe(cost);
    }
  });
});

test('a strand is laid out with guards, without cover or ring, and with a chain of more links than count', () => {
  const pieces = [
    guarded,
    withEnds(guarded, { guard: 'six' }),
    withEnds(hung, { cover: null, ring: null }),
    withEnds(hung, { loopMm: 0.5 }),
    withEnds(hung, { extenderMm: 400 }),
  ];
  for (const piece of pieces) {
    for (const chainMm of [0, piece.ends.extenderMm]) {
      const sequence = expand(piece, [[3, 2]])[0]!;
      expect(verifierParts(piece, piece.strands[0]!, [3, 2], chainMm)).toEqual(
        loopParts(piece, sequence, chainMm),
      );
    }
  }
});

test('a strand is as far off as its chain can’t make up for, and several have none', () => {
  const chained = withEnds(hung, { extenderMm: 40 });
  const lengthMm = made(hung).finishedLengthMm;
  expect(spanMm(hung, 0, [3, 2], 'length')).toEqual([lengthMm, lengthMm]);
  expect(spanMm(chained, 0, [3, 2], 'length')).toEqual([lengthMm, lengthMm + 40]);
  const two = { ...chained, strands: [...chained.strands, ...chained.strands] };
  expect(spanMm(two, 1, [3, 2], 'length')).toEqual([lengthMm, lengthMm]);
  const off = (mm: number): number => offMm(chained, 0, [3, 2], 'length', lengthMm + mm);
  expect([-5, 0, 20, 40, 45].map(off)).toEqual([5, 0, 0, 0, -5]);
  expect(worstOf([1, -3, 2])).toBe(-3);
  expect(worstOf([])).toBe(0);
});
