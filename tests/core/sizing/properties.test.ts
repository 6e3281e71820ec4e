import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { verifyCandidate } from '#core/verify/candidate.ts';
import type { Choice } from '#core/design/choice.ts';
import { range } from '#core/sizing/range.ts';
import { size } from '#core/sizing/size.ts';
import type { Candidate, Sizing } from '#core/sizing/sizing.ts';
import { describe as describePiece, usual } from '#core/sizing/usual.ts';
import type { Design, PieceKind } from '#core/design/design.ts';
import { focalBracelet, necklace, rules, tubeBracelet } from '../designs.ts';
import { askedMm, random, randomDesign } from '../random.ts';
import { mapComponents } from '#tests/support/blank.ts';

const KINDS: readonly PieceKind[] = ['necklace', 'bracelet'];

type Case = { readonly design: Design; readonly choice: Choice };

/** A random design and a choice somewhere near what it can be. */
const someCase: fc.Arbitrary<Case> = fc
  .record({
    seed: fc.nat(),
    kind: fc.constantFrom(...KINDS),
    share: fc.double({ min: -0.1, max: 1.1, noNaN: true }),
  })
  .map(({ seed, kind, share }) => {
    const design = randomDesign(random(seed), kind, { sections: 3, repeats: 10 });
    const known = range(design, rules);
    const limits = known.status === 'known' ? known.limits : { leastAskedMm: 150, mostAskedMm: 200 };
    const of = kind === 'necklace' ? 'length' : 'wrist';
    return { design, choice: choose(of, Math.round(10 * askedMm(of, limits, share)) / 10) };
  });

function choose(of: Choice['measure']['of'], mm: number): Choice {
  return { measure: { of, mm }, sit: 'easy', hand: 'right', pick: 'best', quantity: 1 };
}

const sized = (design: Design, choice: Choice): Sizing => size(design, rules, 4800, choice);

function answer(sizing: Sizing): Candidate | null {
  if (sizing.status === 'refused') return null;
  return sizing.status === 'outside' ? sizing.nearest : sizing.best;
}

/** Cases of one property, and how many of them were answered on all sides: a refusal has nothing to compare. */
function answered(cases: number, compared: number): void {
  expect(compared).toBeGreaterThan(0.8 * cases);
}

describe('symmetries: the same answer', () => {
  test('with other names, and components in another order', () => {
    let [cases, compared] = [0, 0];
    fc.assert(
      fc.property(someCase, ({ design, choice }) => {
        const renamed: Design = {
          ...mapComponents(design, (one) => ({ ...one, name: `other ${one.name}` })),
          components: Object.fromEntries(Object.entries(design.components).toReversed()),
        };
        const [one, other] = [answer(sized(design, choice)), answer(sized(renamed, choice))];
        expect(other?.counts).toEqual(one?.counts);
        cases += 1;
        if (one !== null) compared += 1;
      }),
    );
    answered(cases, compared);
  });

  test('strung from the other end', () => {
    let [cases, compared] = [0, 0];
    fc.assert(
      fc.property(someCase, ({ design, choice }) => {
        // Without ring and chain the closing reads the same both ways, so the whole loop is turned round.
        const open = { ...design, ends: { ...design.ends, ring: null, extenderMm: 0 } };
        const turned: Design = {
          ...open,
          strands: design.strands.map((strand) =>
            strand.mirrored
              ? strand
              : {
                  ...strand,
                  sections: strand.sections
                    .map((section) => ({ ...section, motif: section.motif.toReversed() }))
                    .toReversed(),
                },
          ),
        };
        const [one, other] = [answer(sized(open, choice)), answer(sized(turned, choice))];
        // By the design's own section order ties may fall otherwise, so what is compared is what it measures.
        expect(other === null).toBe(one === null);
        cases += 1;
        if (one === null || other === null) return;
        compared += 1;
        expect(Math.abs(other.errorMm)).toBeCloseTo(Math.abs(one.errorMm), 2);
      }),
    );
    answered(cases, compared);
  });

  test('a girth in inches is the girth in millimetres', () => {
    const inches = sized(focalBracelet, choose('wrist', 6.5 * 25.4));
    expect(inches.status).toBe('fits');
    expect(answer(inches)?.counts).toEqual(answer(sized(focalBracelet, choose('wrist', 165.1)))?.counts);
  });
});

describe('monotony', () => {
  test('of two wrists the larger never gets a piece that is smaller by more than the tolerance twice over', () => {
    let [cases, compared] = [0, 0];
    fc.assert(
      fc.property(someCase, fc.integer({ min: 1, max: 40 }), ({ design, choice }, more) => {
        const larger = { ...choice, measure: { ...choice.measure, mm: choice.measure.mm + more } };
        const [one, other] = [answer(sized(design, choice)), answer(sized(design, larger))];
        cases += 1;
        if (one === null || other === null) return;
        compared += 1;
        expect(other.fittedMm).toBeGreaterThan(one.fittedMm - 2 * rules.toleranceMm[design.kind]);
      }),
    );
    answered(cases, compared);
  });

  test('more stock never fits worse', () => {
    let [cases, compared] = [0, 0];
    fc.assert(
      fc.property(someCase, ({ design, choice }) => {
        const [scarce, plenty] = [
          sized(design, choice),
          sized(
            mapComponents(design, (one) => ({ ...one, stock: null })),
            choice,
          ),
        ];
        const [one, other] = [answer(scarce), answer(plenty)];
        cases += 1;
        if (one === null) return;
        compared += 1;
        const excess = (of: Candidate): number =>
          Math.max(0, Math.abs(of.errorMm) - rules.toleranceMm[design.kind]);
        expect(excess(other!)).toBeLessThanOrEqual(excess(one) + 0.006);
      }),
    );
    answered(cases, compared);
  });
});

const RUNS = process.env['CLASPWISE_QUICK'] ? 50 : 200;

test('range and fit agree everywhere', () => {
  const said = { refused: 0, inside: 0, outside: 0 };
  fc.assert(
    fc.property(someCase, ({ design, choice }) => {
      const [known, sizing] = [range(design, rules), sized(design, choice)];
      if (known.status === 'refused') {
        expect(sizing.status).toBe('refused');
        said.refused += 1;
        return;
      }
      if (sizing.status === 'refused') {
        expect(sizing.problem.code).toMatch(/^measure-/);
        said.refused += 1;
        return;
      }
      const { targetMm } = sizing;
      const edge = known.intervals.some(
        ({ fromMm, toMm }) => Math.min(Math.abs(fromMm - targetMm), Math.abs(toMm - targetMm)) < 0.011,
      );
      fc.pre(!edge);
      const inside = known.intervals.some(({ fromMm, toMm }) => targetMm > fromMm && targetMm < toMm);
      expect(sizing.status === 'fits').toBe(inside);
      said[inside ? 'inside' : 'outside'] += 1;
    }),
    { numRuns: RUNS },
  );
  expect(said.refused).toBeLessThan(0.2 * RUNS);
  expect(said.inside).toBeGreaterThan(0.3 * RUNS);
  expect(said.outside).toBeGreaterThan(0.3 * RUNS);
});

test.each([focalBracelet, tubeBracelet, necklace])('the piece as listed is its own best answer', (design) => {
  const listed = describePiece(design, rules, 4800, usual(design));
  expect(verifyCandidate(design, listed, 1)).toEqual([]);
  expect(listed.changes).toEqual([]);
  const of = design.kind === 'necklace' ? 'length' : 'wrist';
  const mm = listed.fittedMm - (of === 'length' ? 0 : rules.easeMm[design.kind].easy);
  const sizing = sized(design, choose(of, mm));
  expect(sizing.status).toBe('fits');
  expect(answer(sizing)?.counts).toEqual(usual(design));
  expect(answer(sizing)?.errorMm).toBeCloseTo(0, 5);
});
