import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ADULTS, LANDMARKS } from '#core/body/data.ts';
import { figureOf, LEAST_NECK_MM, meanOf, MOST_HEIGHT_MM, MOST_NECK_MM } from '#core/body/figure.ts';
import type { Figure } from '#core/body/figure.ts';
import { neckBase } from '#core/body/neckBase.ts';
import type { Wearer } from '#core/body/wearer.ts';

function figure(wearer: Wearer): Figure {
  const found = figureOf(wearer);
  if (!found.ok) throw new Error(found.problem.code);
  return found.figure;
}

describe('an adult', () => {
  it('with neck and height known rests on the lines of her group', () => {
    const found = figure({ sex: 'female', neckGirthMm: 330, heightMm: 1700 });
    const { pitToBust, pitToNavelFromHeight, napeAbovePitFromHeight } = LANDMARKS.female;
    expect(found.neckGirth).toEqual({ mm: 330, sdMm: 0 });
    expect(found.neckBase).toEqual({ mm: 75.31023 + 0.89708 * 330, sdMm: 9.44 });
    expect(found.bust?.mm).toBeCloseTo(
      pitToBust.intercept + pitToBust.perHeight * 1700 + pitToBust.perNeck * 330,
    );
    expect(found.bust?.sdMm).toBe(20.66);
    expect(found.navel?.mm).toBeCloseTo(pitToNavelFromHeight.intercept + pitToNavelFromHeight.slope * 1700);
    expect(found.napeAbovePit.mm).toBeCloseTo(
      napeAbovePitFromHeight.intercept + napeAbovePitFromHeight.slope * 1700,
    );
    expect(found.assumptions).toEqual([]);
    expect(found.child).toBe(false);
  });

  it('with height alone takes the bust from it', () => {
    const { intercept, slope, residualSd } = LANDMARKS.male.pitToBustFromHeight;
    const { bust, assumptions } = figure({ sex: 'male', neckGirthMm: null, heightMm: 1800 });
    expect(bust?.mm).toBeCloseTo(intercept + slope * 1800);
    expect(bust?.sdMm).toBe(residualSd);
    expect(assumptions).toEqual(['mean-neck']);
  });

  it('with nothing known is the mean of the group, with its spread', () => {
    const {
      neckGirth,
      neckBase: base,
      bust,
      navel,
      napeAbovePit,
      assumptions,
    } = figure({
      sex: 'female',
      neckGirthMm: null,
      heightMm: null,
    });
    expect([neckGirth, base, bust, navel, napeAbovePit]).toEqual(
      (['neckGirthMm', 'neckBaseGirthMm', 'pitToBustMm', 'pitToNavelMm', 'napeAbovePitMm'] as const).map(
        (measure) => ({ mm: ADULTS.female[measure].mean, sdMm: ADULTS.female[measure].sd }),
      ),
    );
    expect(assumptions).toEqual(['mean-neck', 'mean-height']);
  });

  it('of unstated sex lies between, with the spread of both and of their difference', () => {
    const neck = meanOf('unstated', 'neckGirthMm');
    expect(neck.mm).toBeCloseTo((329.8 + 397.6) / 2, 9);
    expect(neck.sdMm).toBeCloseTo(Math.sqrt((19.2 ** 2 + 25.8 ** 2) / 2 + ((397.6 - 329.8) / 2) ** 2), 9);
    expect(figure({ sex: 'unstated', neckGirthMm: 360, heightMm: 1700 }).assumptions).toEqual(['pooled']);
  });
});

describe('a child', () => {
  it('of six has the neck of six, by adult lines, and no landmarks', () => {
    const found = figure({ ageYears: 6, neckGirthMm: null });
    expect(found.neckGirth).toEqual({ mm: 257, sdMm: 14 });
    expect(found.neckBase.mm).toBeCloseTo(neckBase(257).mm, 9);
    expect(found.neckBase.sdMm).toBeCloseTo(Math.hypot(9.4, 0.9301 * 14), 6);
    expect(found.napeAbovePit.mm).toBeLessThan(meanOf('unstated', 'napeAbovePitMm').mm);
    expect([found.bust, found.navel, found.child]).toEqual([null, null, true]);
    expect(found.assumptions).toEqual(['mean-neck', 'adult-lines']);
  });

  it('with a measured neck has that neck', () => {
    const found = figure({ ageYears: 10, neckGirthMm: 270 });
    expect(found.neckGirth).toEqual({ mm: 270, sdMm: 0 });
    expect(found.assumptions).toEqual(['adult-lines']);
  });

  it.each([0, 0.5, 1.99, -3, NaN])(
    'under two (%f) is refused: there is no default for a baby',
    (ageYears) => {
      expect(figureOf({ ageYears, neckGirthMm: null })).toEqual({
        ok: false,
        problem: { code: 'under-two', ageYears },
      });
      expect(figureOf({ ageYears, neckGirthMm: 220 }).ok).toBe(false);
    },
  );

  it('exactly two, and just under nineteen, are in the survey; nineteen is no child', () => {
    expect(figure({ ageYears: 2, neckGirthMm: null }).neckGirth.mm).toBe(238);
    expect(figure({ ageYears: 18.9, neckGirthMm: null }).neckGirth.mm).toBe(345);
    expect(figureOf({ ageYears: 19, neckGirthMm: null })).toEqual({
      ok: false,
      problem: { code: 'no-child', ageYears: 19, mostYears: 19 },
    });
  });
});

describe('what can not be a body', () => {
  it.each([LEAST_NECK_MM - 1, MOST_NECK_MM + 1, NaN, Infinity, -1])('a neck of %f', (neckGirthMm) => {
    expect(figureOf({ sex: 'female', neckGirthMm, heightMm: null })).toMatchObject({
      ok: false,
      problem: { code: 'girth-absurd', leastMm: LEAST_NECK_MM, mostMm: MOST_NECK_MM },
    });
  });

  it.each([100, MOST_HEIGHT_MM + 1, NaN])('a height of %f', (heightMm) => {
    expect(figureOf({ sex: 'male', neckGirthMm: null, heightMm })).toMatchObject({
      ok: false,
      problem: { code: 'height-absurd', leastMm: 800, mostMm: 2500 },
    });
  });

  it('the limits themselves are bodies', () => {
    expect(figureOf({ sex: 'female', neckGirthMm: LEAST_NECK_MM, heightMm: 800 }).ok).toBe(true);
    expect(figureOf({ sex: 'female', neckGirthMm: MOST_NECK_MM, heightMm: MOST_HEIGHT_MM }).ok).toBe(true);
  });
});

it('a larger neck never has a smaller base', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 180, max: 640, noNaN: true }),
      fc.constantFrom('female', 'male', 'unstated'),
      (mm, sex) => {
        expect(neckBase(mm + 1, sex).mm).toBeGreaterThan(neckBase(mm, sex).mm);
      },
    ),
  );
});
