import { describe, expect, it } from 'vitest';
import { ADULTS, NECK_BASE_FROM_NECK, WRITING_HAND } from '#core/body/data.ts';
import { CHILD_NECK_GIRTH_MM, CHILD_WRIST_GIRTH_MM } from '#core/body/dataChildren.ts';
import { figureOf } from '#core/body/figure.ts';
import { lieOf } from '#core/body/lie.ts';
import { neckBase } from '#core/body/neckBase.ts';

const { female, male } = ADULTS;

// C. C. Gordon et al., NATICK/TR-15/007, 2014, computed from the public rows of the survey.
describe('adults of the 2012 survey', () => {
  it.each([
    ['stature, women', female.heightMm, 1628.5, 64.2],
    ['stature, men', male.heightMm, 1756.2, 68.6],
    ['neck girth, women', female.neckGirthMm, 329.8, 19.2],
    ['neck girth, men', male.neckGirthMm, 397.6, 25.8],
    ['neck-base girth, women', female.neckBaseGirthMm, 371.2, 19.7],
    ['neck-base girth, men', male.neckBaseGirthMm, 434.6, 25.7],
    ['wrist, women', female.wristGirthMm, 154.8, 7.8],
    ['wrist, men', male.wristGirthMm, 175.9, 9.0],
    ['ankle, women', female.ankleGirthMm, 215.7, 14.9],
    ['ankle, men', male.ankleGirthMm, 229.3, 14.6],
  ])('%s', (_, spread, mean, sd) => {
    expect([spread.mean, spread.sd]).toEqual([mean, sd]);
  });

  it.each(['female', 'male'] as const)('a line of least squares runs through the means: %s', (sex) => {
    const { neckGirthMm, neckBaseGirthMm } = ADULTS[sex];
    expect(Math.abs(neckBase(neckGirthMm.mean, sex).mm - neckBaseGirthMm.mean)).toBeLessThan(0.1);
  });

  // Residual spread 9.4 mm: 90 % of people within 15 mm.
  it('neck base from neck girth is good to about 15 mm for nine in ten', () => {
    expect(NECK_BASE_FROM_NECK.unstated.residualSd * 1.645).toBeCloseTo(15.5, 1);
  });

  it('about one in ten writes with the left', () => {
    const left = WRITING_HAND.female.left + WRITING_HAND.male.left;
    const all = [WRITING_HAND.female, WRITING_HAND.male].flatMap((hand) => Object.values(hand));
    expect(left / all.reduce((sum, count) => sum + count, 0)).toBeCloseTo(0.108, 3);
  });
});

// R. G. Snyder et al., UM-HSRI-77-17, 1977.
describe('children', () => {
  it('begin at two years, grow, and leave no gap', () => {
    for (const rows of [CHILD_NECK_GIRTH_MM, CHILD_WRIST_GIRTH_MM]) {
      expect(rows[0]?.ageFrom).toBe(2);
      rows.slice(1).forEach((row, index) => expect(row.ageFrom).toBe(rows[index]?.ageTo));
    }
    expect(CHILD_NECK_GIRTH_MM[0]).toMatchObject({ mean: 238, sd: 12 });
    expect(CHILD_WRIST_GIRTH_MM[0]).toMatchObject({ mean: 113, sd: 8 });
    expect(CHILD_NECK_GIRTH_MM.at(-1)).toMatchObject({ mean: 345, sd: 33 });
  });
});

const averageWoman = figureOf({
  sex: 'female',
  neckGirthMm: female.neckGirthMm.mean,
  heightMm: female.heightMm.mean,
});

/** Drop in inches of a fine, even strand on an average woman. */
function dropIn(inches: number): number {
  if (!averageWoman.ok) throw new Error('an average woman is a body');
  const load = { lengthMm: inches * 25.4, gPerMm: 0.03, pendantG: 0, pendantMiddleMm: 0, acrossMm: 2 };
  const lie = lieOf(load, averageWoman.figure);
  return lie.status === 'too-short' ? NaN : lie.dropMm / 25.4;
}

// Common practice, no source: bands for sanity, not hard values.
describe('where named lengths lie on an average woman (common practice, no source)', () => {
  it.each([
    [14, -0.6, 0.3, 'at the base of the neck'],
    [16, 0.3, 1.2, 'about an inch below the pit'],
    [18, 1.2, 2.4, 'about two inches below it'],
    [20, 2.3, 3.4, 'about three inches below it'],
    [24, 4.2, 6.2, 'just above the bust, which is 6.2 in. below the pit'],
  ])('%i in.', (inches, least, most) => {
    expect(dropIn(inches)).toBeGreaterThan(least);
    expect(dropIn(inches)).toBeLessThan(most);
  });
});
