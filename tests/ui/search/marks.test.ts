import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  FITS_OF,
  fitsFilter,
  markNames,
  marksOf,
  nearestStep,
  SPAN_MM,
  STEP_MM,
  type Marks,
  type Stretch,
} from '#ui/search/marks.ts';

type Of = (typeof FITS_OF)[number];

/** What the index does with the filters: any of the values, and not the other. */
function found(of: Of, marks: Marks, askedMm: number): boolean {
  const filter = fitsFilter(of, askedMm);
  const names = markNames(of);
  const any = (name: string, value: number): boolean => {
    const rule = filter[name];
    return rule !== undefined && 'any' in rule && rule.any.includes(String(value));
  };
  const gap = filter[names.gap];
  const missed = gap !== undefined && 'not' in gap && marks.gaps.map(String).includes(gap.not);
  return any(names.from, marks.from) && any(names.to, marks.to) && !missed;
}

const stretchesFor = (of: Of): fc.Arbitrary<Stretch[]> => {
  const [least, most] = SPAN_MM[of];
  return fc
    .uniqueArray(fc.double({ min: least - 50, max: most + 50, noNaN: true }), { minLength: 2, maxLength: 8 })
    .map((ends) => {
      const sorted = [...ends].sort((a, b) => a - b);
      return Array.from({ length: Math.floor(sorted.length / 2) }, (_, index) => ({
        leastMm: sorted[2 * index] ?? 0,
        mostMm: sorted[2 * index + 1] ?? 0,
      }));
    });
};

describe('size marks', () => {
  test.each(FITS_OF)('find a piece by %s exactly where a stretch holds the step', (of) => {
    const asked = fc.double({ min: SPAN_MM[of][0], max: SPAN_MM[of][1], noNaN: true });
    fc.assert(
      fc.property(stretchesFor(of), asked, (stretches, askedMm) => {
        const marks = marksOf(of, stretches);
        const at = nearestStep(of, askedMm);
        const fits = stretches.some(({ leastMm, mostMm }) => leastMm <= at && at <= mostMm);
        expect(marks !== null && found(of, marks, askedMm)).toBe(fits);
      }),
      { numRuns: 300 },
    );
  });

  test('stay within half a step of what was asked', () => {
    for (const of of FITS_OF) {
      for (let mm = SPAN_MM[of][0]; mm <= SPAN_MM[of][1]; mm += 0.7) {
        expect(Math.abs(nearestStep(of, mm) - mm)).toBeLessThanOrEqual(STEP_MM[of] / 2 + 1e-9);
      }
    }
  });

  test('are none where no whole step is met', () => {
    expect(marksOf('wrist', [])).toBeNull();
    expect(marksOf('wrist', [{ leastMm: 160.2, mostMm: 161.8 }])).toBeNull();
  });
});
