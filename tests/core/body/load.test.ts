/** What of a strung strand the body feels, from figures added up in the head. */
import { describe, expect, test } from 'vitest';
import { lieOf } from '#core/body/lie.ts';
import { figureOf } from '#core/body/figure.ts';
import { hang } from '#core/body/hanging.ts';
import { loadOf, pendantMiddleMm } from '#core/body/load.ts';
import { expand } from '#core/design/expand.ts';
import type { Design } from '#core/design/design.ts';
import { ball, component, design, section, strand } from '../designs.ts';

const one = (id: string) => [{ component: id, count: 1 }];

/** Clasp 10, ring 4, two wire loops of 4, two covers of 3: 28 mm; a one-run strand of 8 mm, then 4 mm, then 6 mm. */
const uneven = (counts: readonly [number, number, number], over: Partial<Design> = {}): Design =>
  design(
    'necklace',
    [
      strand(
        'only',
        ['eight', 'four', 'six'].map((id, at) => {
          const count = counts[at]!;
          return section(id, one(id), [count, count, count]);
        }),
        false,
      ),
    ],
    [
      { ...ball('eight', 8), massG: 1 },
      { ...ball('four', 4), massG: 0.5 },
      { ...ball('six', 6), massG: 2 },
      component('drop', { kind: 'pendant', hangMm: 30, massG: 5 }),
      component('jump', { kind: 'ring', alongMm: 3, massG: 0.25 }),
      component('bail', { kind: 'ring', alongMm: 5, massG: 0.75 }),
    ],
    over,
  );

const load = (piece: Design, index = 0) => {
  const counts = piece.strands.map(({ sections }) => sections.map(({ usual }) => usual));
  return loadOf(piece, expand(piece, counts)[index]!, index);
};

describe('a strand on a neck', () => {
  test('is as wide there as its two outer quarters are on the mean, by their length', () => {
    // Eight components: two of 8 mm at one end, two of 6 mm at the other.
    expect(load(uneven([2, 4, 2])).acrossMm).toBeCloseTo((2 * 8 * 8 + 2 * 6 * 6) / (2 * 8 + 2 * 6), 12);
    // Of nine a quarter is three, rounded up: 8, 8, 4 and 6, 6, 6.
    const nine = (2 * 64 + 16 + 3 * 36) / (2 * 8 + 4 + 3 * 6);
    expect(load(uneven([2, 4, 3])).acrossMm).toBeCloseTo(nine, 12);
    expect(load(uneven([0, 0, 0])).acrossMm).toBe(0);
  });

  test('weighs what is strung over its whole finished length', () => {
    const weightless = uneven([0, 4, 0]);
    const endsG = 28 * load(uneven([0, 0, 0])).gPerMm;
    expect(load(weightless).lengthMm).toBe(44);
    expect(load(weightless).gPerMm).toBeCloseTo((endsG + 4 * 0.5) / 44, 12);
  });

  test('bears its pendant by the rings it hangs from; other strands bear none', () => {
    const hanging = { pendant: 'drop', rings: ['jump', 'bail'] };
    const piece = uneven([2, 4, 2], { hanging });
    expect(pendantMiddleMm(piece)).toBe(3 + 5 + 15);
    expect(pendantMiddleMm(uneven([2, 4, 2]))).toBe(0);
    expect(load(piece)).toMatchObject({ pendantG: 6, pendantMiddleMm: 23 });
    expect(load(uneven([2, 4, 2]))).toMatchObject({ pendantG: 0, pendantMiddleMm: 0 });
    const two = { ...piece, strands: [...piece.strands, ...piece.strands] };
    expect(load(two, 1)).toMatchObject({ pendantG: 0, pendantMiddleMm: 0 });
  });

  test('pulls at its points by its mass and standard gravity', () => {
    const found = figureOf({ sex: 'female', neckGirthMm: 340, heightMm: 1650 });
    if (!found.ok) throw new Error(found.problem.code);
    const worn = { lengthMm: 480, gPerMm: 0.05, pendantG: 6, pendantMiddleMm: 20, acrossMm: 4 };
    const lie = lieOf(worn, found.figure);
    if (lie.status === 'too-short') throw new Error('it should close');
    const pull = hang(lie.frontMm, lie.spanMm, 6 / 0.05)!.pullMm;
    expect(lie.pullN).toBeCloseTo(pull * 0.05e-3 * 9.80665, 12);
  });
});
