import { describe, expect, test } from 'vitest';
import { expand } from '#core/design/expand.ts';
import { chainParts, finishedLengthMm, loopParts, wireLoopPart } from '#core/design/loopParts.ts';
import { withEnds, withHanging } from '#core/design/swap.ts';
import { ball, component, design, focalBracelet, section, strand } from '../designs.ts';

const beads = [ball('a', 5), ball('b', 3), ball('c', 9)];
const ab = [
  { component: 'a', count: 1 },
  { component: 'b', count: 2 },
];
const c = [{ component: 'c', count: 1 }];
const mirrored = design(
  'bracelet',
  [
    strand('m', [
      section('mid', c, [1, 1, 1], 'focal'),
      section('s', ab, [2, 0, 4]),
      section('t', c, [1, 0, 2]),
    ]),
  ],
  beads,
);
const oneRun = design(
  'necklace',
  [strand('r', [section('s', ab, [2, 0, 4]), section('t', c, [1, 0, 2])], false)],
  beads,
);
const ids = (sequence: readonly { component: { id: string } }[]): string =>
  sequence.map((placed) => placed.component.id).join(' ');

describe('stringing order', () => {
  test('mirrored: outwards from the focal on both sides, motifs backwards on the clasp side', () => {
    const [sequence] = expand(mirrored, [[1, 2, 1]]);
    expect(ids(sequence!)).toBe('crimp cover c b b a b b a c a b b a b b c cover crimp');
    expect(sequence!.map((placed) => placed.side[0]).join('')).toBe('lllllllllcrrrrrrrrr');
    expect(sequence!.map((placed) => placed.section).join(' ')).toBe(
      'end end t s s s s s s mid s s s s s s t end end',
    );
  });

  test('one run: from clasp to ring, sides told by the middle', () => {
    const [sequence] = expand(oneRun, [[2, 1]]);
    expect(ids(sequence!)).toBe('crimp cover a b b a b b c cover crimp');
    expect(sequence!.map((placed) => placed.side[0]).join('')).toBe('llllllrrrrr');
  });

  test('a covered crimp is marked, a bare one is not', () => {
    expect(expand(mirrored, [[1, 0, 0]])[0]!.map((placed) => placed.covered ?? false)).toEqual([
      true,
      false,
      false,
      false,
      true,
    ]);
    const bare = withEnds(mirrored, { cover: null });
    expect(ids(expand(bare, [[1, 0, 0]])[0]!)).toBe('crimp c crimp');
    expect(expand(bare, [[1, 0, 0]])[0]!.some((placed) => placed.covered)).toBe(false);
  });

  test('counts left out are none', () => {
    expect(ids(expand(mirrored, [])[0]!)).toBe('crimp cover cover crimp');
  });
});

describe('finished length: beads, covers, two wire loops, ring and clasp', () => {
  test('adds up', () => {
    const [sequence] = expand(mirrored, [[1, 2, 1]]);
    // beads 9 + 2·(2·11 + 9), covers 2·3, loops 2·4, ring 4, clasp 10
    expect(finishedLengthMm(mirrored, sequence!)).toBe(71 + 6 + 8 + 4 + 10);
    expect(finishedLengthMm(mirrored, sequence!, 12)).toBeCloseTo(111, 9);
  });

  test('a bare crimp counts itself, a clasp of two halves no ring', () => {
    const other = withEnds(mirrored, { cover: null, ring: null });
    expect(finishedLengthMm(other, expand(other, [[1, 0, 0]])[0]!)).toBe(9 + 4 + 8 + 10);
  });

  test('the loop closes clasp end, beads, ring end, loop, ring, clasp, loop', () => {
    const parts = loopParts(mirrored, expand(mirrored, [[1, 0, 0]])[0]!);
    expect(parts.map((part) => part.alongMm)).toEqual([3, 9, 3, 4, 4, 10, 4]);
  });
});

describe('wire loops and chain', () => {
  test('a loop is two wires across, or two guards', () => {
    expect(wireLoopPart(mirrored)).toEqual({ alongMm: 4, acrossMm: 0.76, roundingMm: 0.38 });
    const guarded = withEnds(mirrored, { guard: 'guard' }, [
      component('guard', { alongMm: 4, acrossMm: 0.9 }),
    ]);
    expect(wireLoopPart(guarded).acrossMm).toBe(1.8);
    expect(wireLoopPart(withEnds(mirrored, { loopMm: 0.5 })).roundingMm).toBe(0.25);
  });

  test('a chain bends link by link and takes what it is let out by', () => {
    const chained = withEnds(mirrored, { extenderMm: 50 });
    expect(chainParts(chained, 0)).toEqual([]);
    expect(chainParts(chained, -1)).toEqual([]);
    const links = chainParts(chained, 34);
    expect(links).toHaveLength(17);
    expect(links[0]).toEqual({ alongMm: 2, acrossMm: 2, roundingMm: 1 });
  });
});

test('a buyer may have another clasp or pendant: the rest of the design stays', () => {
  const box = component('box', { kind: 'clasp', shape: 'box', alongMm: 14, holeMm: 0 });
  const boxed = withEnds(focalBracelet, { clasp: 'box', ring: null }, [box]);
  expect(boxed.components['box']).toBe(box);
  expect(boxed.ends).toEqual({ ...focalBracelet.ends, clasp: 'box', ring: null });
  expect(boxed.strands).toBe(focalBracelet.strands);
  const drop = component('drop', { kind: 'pendant', alongMm: 0, hangMm: 20 });
  const hung = withHanging(focalBracelet, { pendant: 'drop', rings: ['ring'] }, [drop]);
  expect(hung.hanging).toEqual({ pendant: 'drop', rings: ['ring'] });
  expect(hung.components['drop']).toBe(drop);
  expect(withHanging(hung, null).hanging).toBeNull();
});

test('of a run without a mirror the first half lies left; a middle bead counts to the left', () => {
  const sidesOf = (counts: readonly number[]): string =>
    (expand(oneRun, [counts])[0] ?? [])
      .filter(({ section: id }) => id !== 'end')
      .map(({ side }) => side[0])
      .join('');
  expect(sidesOf([2, 0])).toBe('lllrrr');
  expect(sidesOf([2, 1])).toBe('llllrrr');
});
