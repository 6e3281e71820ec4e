/** What a fit reckons with, against the loop and the sum of a strand laid out whole. */
import { expect, test } from 'vitest';
import { withoutLinks } from '#core/design/chain.ts';
import { girthMeasure } from '#core/solver/girth.ts';
import { lengthMeasure, strandLoop } from '#core/solver/measure.ts';
import { toNm } from '#core/solver/outcome.ts';
import { solveLoop } from '#core/geometry/loop.ts';
import type { Design } from '#core/design/design.ts';
import { component, design, focalBracelet, section, strand } from '../designs.ts';
import { random, randomDesign, randomStrands } from '../random.ts';

/** Ends as a shop may have them: without cover or ring, with a guard, wire loops drawn tight, a long covered crimp. */
const ENDS: readonly Partial<Design['ends']>[] = [
  {},
  { cover: null },
  { ring: null },
  { loopMm: 0 },
  { guard: 'bead0' },
  { extenderMm: 35 },
];

function* laidOut(kind: 'necklace' | 'bracelet') {
  for (let seed = 1; seed <= 60; seed += 1) {
    const of = random(seed);
    const make = of.next() < 0.7 ? randomDesign : randomStrands;
    const bare = make(of, kind, { sections: 3, repeats: 6 });
    const { ends } = withoutLinks(bare);
    const piece = { ...bare, ends: { ...ends, ...of.pick(ENDS) } };
    const at = of.whole(0, piece.strands.length - 1);
    const chainMm = piece.ends.extenderMm;
    // Few and many by turns: what was solved last steers what is solved next.
    const tries = Array.from({ length: 6 }, (_, round) =>
      piece.strands[at]!.sections.map(({ usual }) => (round % 2 === 0 ? usual : of.whole(0, 9))),
    );
    yield { seed, piece, at, chainMm, tries };
  }
}

test('a girth is that of the whole loop, its chain closed and let out', () => {
  for (const { seed, piece, at, chainMm, tries } of laidOut('bracelet')) {
    const measure = girthMeasure(piece, at, chainMm);
    for (const counts of tries) {
      const [lowNm, highNm] = [0, chainMm].map((letOutMm) =>
        toNm(solveLoop(strandLoop(piece, at, counts, letOutMm)).insideGirthMm),
      );
      // Bounded first: what that finds must not spoil what is measured.
      measure.least(counts);
      measure.most(counts);
      const fine = measure.of(counts);
      const said = `seed ${seed}, ${counts.join()}`;
      expect(Math.abs(fine.lowNm - lowNm!), said).toBeLessThanOrEqual(1);
      expect(Math.abs(fine.highNm - highNm!), said).toBeLessThanOrEqual(1);
      expect(measure.of(counts)).toBe(fine);
      if (chainMm === 0) expect(fine.highNm).toBe(fine.lowNm);
      else expect(fine.highNm).toBeGreaterThan(fine.lowNm);
    }
  }
});

test('what closes round nothing has no girth', () => {
  const wheel = component('wheel', { alongMm: 5, acrossMm: 90, roundingMm: 0 });
  const piece = design(
    'bracelet',
    [strand('only', [section('run', [{ component: 'wheel', count: 1 }], [1, 0, 40])])],
    [wheel],
  );
  const measure = girthMeasure(piece, 0, 0);
  expect(measure.of([1])).toEqual({ lowNm: 0, highNm: 0 });
  const closedNm = measure.of([40]).lowNm;
  expect(closedNm).toBeGreaterThan(0);
  // What doesn't close tells nothing of what does.
  expect(measure.of([2])).toEqual({ lowNm: 0, highNm: 0 });
  expect(Math.abs(measure.guessNm([40]) - closedNm)).toBeLessThanOrEqual(1);
});

test('a length is the sum of what is strung and what closes it', () => {
  for (const { seed, piece, at, chainMm, tries } of laidOut('necklace')) {
    const measure = lengthMeasure(piece, at, chainMm);
    expect(measure.zeroApart).toBe(false);
    for (const counts of tries) {
      const lowNm = strandLoop(piece, at, counts, 0).reduce((sum, part) => sum + toNm(part.alongMm), 0);
      const span = { lowNm, highNm: lowNm + toNm(chainMm) };
      expect(measure.of(counts), `seed ${seed}`).toEqual(span);
      expect(measure.least(counts)).toEqual(span);
      expect(measure.most(counts)).toEqual(span);
      expect(measure.guessNm(counts)).toBe(lowNm);
      const more = counts.map((count) => count + 1);
      const addedNm = measure.eachNm!.reduce((sum, each) => sum + each, 0);
      expect(measure.of(more).lowNm).toBe(lowNm + addedNm);
    }
    expect(measure.guessOffNm).toBe(toNm(chainMm));
  }
});

test('a guess from the last loop is near the next', () => {
  const measure = girthMeasure(focalBracelet, 0, 0);
  const usualNm = measure.of([1, 5, 4, 1]).lowNm;
  expect(Math.abs(measure.guessNm([1, 5, 4, 1]) - usualNm)).toBeLessThanOrEqual(1);
  // Two of 4 mm more on each side, which the loop takes up by a little less or more than they are long.
  expect(measure.guessNm([1, 5, 6, 1]) - usualNm).toBe(toNm(16));
  expect(Math.abs(measure.of([1, 5, 6, 1]).lowNm - usualNm - toNm(16))).toBeLessThan(measure.guessOffNm);
  expect(measure.guessOffNm).toBe(toNm(6));
  expect(
    girthMeasure({ ...focalBracelet, ends: { ...focalBracelet.ends, extenderMm: 30 } }, 0, 30).guessOffNm,
  ).toBe(toNm(36));
});
