/** The likeliest counts behind a finished piece, against every choice weighed one by one. */
import { withoutLinks } from '#core/design/chain.ts';
import { expect, test } from 'vitest';
import { explain, type Evidence } from '#core/solver/explain.ts';
import type { Measure } from '#core/solver/measure.ts';
import { toMm, toNm } from '#core/solver/outcome.ts';
import { measureOf } from '#core/solver/measureOf.ts';
import type { Fitted } from '#core/design/choice.ts';
import { random, randomDesign } from '../random.ts';

const MOST = 6;

test.each<[Fitted, number, number, number]>([
  ['length', 40, 272, 3860],
  ['girth', 25, 231, 5155],
])(
  'by %s: the same as weighing them all, and fewer measured',
  (fitted, cases, measuredAtMost, boundedAtMost) => {
    let measured = 0;
    let bounded = 0;
    for (let seed = 1; seed <= cases; seed += 1) {
      const of = random(seed);
      const kind = fitted === 'length' ? 'necklace' : 'bracelet';
      const design = withoutLinks(randomDesign(of, kind, { sections: 3, repeats: 6 }));
      const { sections } = design.strands[0]!;
      const evidence: Evidence = {
        measuredMm: of.whole(1500, 4500) / 10,
        rulerSdMm: of.pick([0, 0.5, 2, 6]),
        estimates: sections.map(({ usual, role }) => ({
          count: usual + of.whole(0, 2),
          sd: role === 'focal' ? 0 : of.pick([0, 0.5, 1]),
        })),
      };
      // A finished piece may have any counts.
      const measure = measureOf(design, 0, fitted, () => [0, Infinity]);
      const all: { counts: number[]; misfit: number; offMm: number }[] = [];
      const weigh = (counts: number[]): void => {
        const estimates = evidence.estimates[counts.length];
        if (estimates !== undefined) {
          const reach = Math.ceil(4 * estimates.sd);
          for (
            let count = Math.max(0, estimates.count - reach);
            count <= estimates.count + reach;
            count += 1
          ) {
            weigh([...counts, count]);
          }
          return;
        }
        const { lowNm, highNm } = measure.of(counts);
        const wanted = toNm(evidence.measuredMm);
        const offMm = toMm(lowNm > wanted ? lowNm - wanted : Math.min(0, highNm - wanted));
        const counting = counts.reduce((sum, count, at) => {
          const { count: counted, sd } = evidence.estimates[at]!;
          return count === counted ? sum : sum + ((count - counted) / sd) ** 2;
        }, 0);
        all.push({ counts, offMm, misfit: counting + (offMm / Math.max(0.05, evidence.rulerSdMm)) ** 2 });
      };
      weigh([]);
      all.sort((one, other) => one.misfit - other.misfit);
      const best = all.slice(0, MOST);
      const likelihoods = best.map(({ misfit }) => Math.exp((best[0]!.misfit - misfit) / 2));
      const whole = likelihoods.reduce((sum, one) => sum + one, 0);

      const counted =
        (measuring: Measure['least']): Measure['least'] =>
        (counts) => {
          bounded += 1;
          return measuring(counts);
        };
      const counting: Measure = {
        ...measure,
        of: (counts) => {
          measured += 1;
          return measure.of(counts);
        },
        least: counted(measure.least),
        most: counted(measure.most),
      };
      const told = explain(counting, evidence, MOST);
      expect(told, `seed ${seed}`).toHaveLength(best.length);
      told.forEach(({ counts, offMm, measuresMm, share }, at) => {
        expect(offMm).toBeCloseTo(measuresMm - evidence.measuredMm, 9);
        expect(share, `seed ${seed}, ${at}`).toBeCloseTo(likelihoods[at]! / whole, 6);
        // Of two as likely either may come first.
        const alike = all.find((one) => one.counts.join() === counts.join())!;
        expect(alike.misfit).toBeCloseTo(best[at]!.misfit, 6);
        expect(alike.offMm).toBeCloseTo(offMm, 9);
      });
    }
    expect(measured).toBeLessThanOrEqual(measuredAtMost);
    expect(bounded).toBeLessThanOrEqual(boundedAtMost);
  },
);
