/** What is said of the girth of every strand in a box of counts, against the strands themselves. */
import { describe, expect, test } from 'vitest';
import { toNm } from '#core/solver/outcome.ts';
import { girthMeasure } from '#core/solver/girth.ts';
import { measureOf } from '#core/solver/measureOf.ts';
import { fitProblem } from '#core/solver/problem.ts';
import { linksToFit } from '#core/design/chain.ts';
import type { Component } from '#core/design/component.ts';
import type { Design } from '#core/design/design.ts';
import { component, design, focalBracelet, section, strand, tubeBracelet } from '../designs.ts';
import { random, randomDesign, type Random } from '../random.ts';

const DESIGNS = process.env['CLASPWISE_THOROUGH'] ? 20_000 : 250;
/** Boxes tried of each design, and choices of each box. */
const BOXES = 4;
const CHOICES = 3;

/** Outlines no shop would string: rods, plates, blocks and eggs beside beads. */
function oddBead(of: Random, id: string): Component {
  const [alongMm, acrossMm] = [of.pick([1, 2, 4, 8, 16, 30]), of.pick([1, 2, 4, 8, 16, 30])];
  return component(id, {
    alongMm,
    acrossMm,
    roundingMm: (Math.min(alongMm, acrossMm) / 2) * of.pick([0, 0.3, 1]),
  });
}

function oddDesign(of: Random): Design {
  const beads = Array.from({ length: of.whole(2, 5) }, (_, at) => oddBead(of, `odd${at}`));
  const sections = Array.from({ length: of.whole(1, 4) }, (_, at) => {
    const motif = Array.from({ length: of.whole(1, 3) }, () => ({
      component: of.pick(beads).id,
      count: of.whole(1, 2),
    }));
    return section(`s${at}`, motif, [4, 0, 12]);
  });
  return design('bracelet', [strand('only', sections, of.next() < 0.7)], beads);
}

type Told = { judged: number; open: number; least: number; most: number };

/** Measures choices of random boxes and holds them against the bounds of the boxes; how much was said of them. */
function holdAgainst(of: Random, piece: Design, told: Told, said: string): void {
  const measure = measureOf(piece, 0, 'girth');
  const { sections } = fitProblem(piece.strands[0]!, new Map(), linksToFit(piece));
  for (let box = 0; box < BOXES; box += 1) {
    const low = sections.map(({ fewest, most }) => of.whole(fewest, most));
    const high = sections.map(({ usual, most }, at) =>
      low[at] === 0 ? low[at]! : of.pick([low[at]!, of.whole(low[at]!, most), Math.max(usual, low[at]!)]),
    );
    const [least, most] = [measure.least(low), measure.most(high)];
    for (let choice = 0; choice < CHOICES; choice += 1) {
      const counts = low.map((count, at) => of.whole(count, high[at]!));
      const span = measure.of(counts);
      told.judged += 1;
      if (span.lowNm === 0) told.open += 1;
      if (least.lowNm > 0) told.least += 1;
      if (most.highNm < Infinity) told.most += 1;
      const where = `${said}: ${low.join()} to ${high.join()}, ${counts.join()}`;
      expect(span.lowNm, where).toBeGreaterThanOrEqual(least.lowNm);
      expect(span.highNm, where).toBeGreaterThanOrEqual(least.highNm);
      expect(span.lowNm, where).toBeLessThanOrEqual(most.lowNm);
      expect(span.highNm, where).toBeLessThanOrEqual(most.highNm);
    }
  }
}

test.each<[string, (of: Random) => Design, Omit<Told, 'judged'>]>([
  [
    'strands as one meets them',
    (of) => randomDesign(of, 'bracelet', { sections: 4, repeats: 10 }),
    { open: 0.02, least: 0.8, most: 0.99 },
  ],
  ['odd ones', oddDesign, { open: 0.3, least: 0.3, most: 0.9 }],
])('every girth lies between the bounds of its box, and most are bounded: %s', (_, make, shares) => {
  const told: Told = { judged: 0, open: 0, least: 0, most: 0 };
  for (let seed = 1; seed <= DESIGNS; seed += 1) {
    const of = random(seed);
    holdAgainst(of, make(of), told, `seed ${seed}`);
  }
  expect(told.judged).toBe(DESIGNS * BOXES * CHOICES);
  expect(told.open).toBeLessThanOrEqual(shares.open * told.judged);
  expect(told.least).toBeGreaterThanOrEqual(shares.least * told.judged);
  expect(told.most).toBeGreaterThanOrEqual(shares.most * told.judged);
});

describe('of one choice, where its distances hang on turns', () => {
  const bounds = (piece: Design, counts: readonly number[]): number[] => {
    const measure = girthMeasure(piece, 0, 0);
    const { lowNm } = measure.of(counts);
    return [lowNm - measure.least(counts).lowNm, measure.most(counts).highNm - lowNm];
  };

  test.each<[string, Design, number[], number, number]>([
    [
      'hardly at all, it is known within what ends and clasp leave open',
      focalBracelet,
      [1, 5, 4, 1],
      0.4,
      0.2,
    ],
    ['everywhere, within a third of all that they open by', tubeBracelet, [7, 2], 6.3, 6.4],
  ])('%s', (_, piece, counts, below, above) => {
    const [least, most] = bounds(piece, counts);
    expect(least).toBeGreaterThanOrEqual(0);
    expect(least).toBeLessThan(toNm(below));
    expect(most).toBeGreaterThanOrEqual(0);
    expect(most).toBeLessThan(toNm(above));
  });
});

test('nothing is said of a strand too short to close, but that it is short', () => {
  const measure = girthMeasure(tubeBracelet, 0, 0);
  expect(measure.least([0, 0]).lowNm).toBeLessThanOrEqual(0);
  expect(measure.most([5, 0]).highNm).toBeLessThan(Infinity);
});
