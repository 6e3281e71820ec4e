import fc from 'fast-check';
import { expect, it } from 'vitest';
import { validateDesign } from '#core/design/validate/validateDesign.ts';
import { describe as describePiece, usual } from '#core/sizing/usual.ts';
import { stringing } from '#core/instructions/stringing.ts';
import type { ValidationError } from '#core/design/validationError.ts';
import type { Design, PieceKind } from '#core/design/design.ts';
import { component, COMPONENTS, design, RULES, section, strand } from '#tests/support/workshop.ts';

/** Sizes of the run: 150 by default, 20,000 with CLASPWISE_THOROUGH=1. */
const numRuns = process.env['CLASPWISE_THOROUGH'] === '1' ? 20_000 : 150;

const size = fc.double({ min: 0.01, max: 300, noNaN: true });
const beads = fc.record({
  alongMm: size,
  acrossMm: size,
  round: fc.double({ min: 0, max: 0.5, noNaN: true }),
  holeMm: size,
});

const odd = fc.record({
  kind: fc.constantFrom<PieceKind>('necklace', 'bracelet', 'anklet', 'collar'),
  beads: fc.array(beads, { minLength: 1, maxLength: 4 }),
  usual: fc.integer({ min: 0, max: 30 }),
  mirrored: fc.boolean(),
  hangs: fc.boolean(),
  rings: fc.integer({ min: 0, max: 4 }),
  loopMm: fc.double({ min: 0, max: 300, noNaN: true }),
  wireMm: fc.double({ min: 0.1, max: 3, noNaN: true }),
  covered: fc.boolean(),
});

function designOf(from: typeof odd extends fc.Arbitrary<infer Odd> ? Odd : never): Design {
  const own = from.beads.map(({ alongMm, acrossMm, round, holeMm }, index) =>
    component(`odd-${index}`, { alongMm, acrossMm, roundingMm: round * Math.min(alongMm, acrossMm), holeMm }),
  );
  return design({
    kind: from.kind,
    strands: [
      strand(
        own.map(({ id }) => section(id, [[id, 1]], { usual: from.usual })),
        { mirrored: from.mirrored },
      ),
    ],
    ends: { ...design().ends, loopMm: from.loopMm, cover: from.covered ? 'cover' : null },
    hanging: from.hangs ? { pendant: 'drop', rings: new Array<string>(from.rings).fill('ring') } : null,
    wire: { ...design().wire, diameterMm: from.wireMm },
    components: { ...COMPONENTS, ...Object.fromEntries(own.map((one) => [one.id, one])) },
  });
}

/** What a random measure may come to. */
const MEASURES: readonly ValidationError['code'][] = [
  ...(['hole-too-small', 'hole-too-wide', 'crimp-too-tight'] as const),
  ...(['rounding-too-large', 'no-length', 'no-width', 'out-of-range'] as const),
];

/** Every number in a plain value, with its path. */
function numbers(value: unknown, at = ''): [string, number][] {
  if (typeof value === 'number') return [[at, value]];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, entry]) => numbers(entry, `${at}.${key}`));
}

it('any design the check lets by gives a card without a NaN, whatever its measures', () => {
  let judged = 0;
  fc.assert(
    fc.property(odd, (from) => {
      const of = designOf(from);
      // Holes at random are often too small; the card has to stand that too.
      const grave = validateDesign(of).filter(({ code }) => !MEASURES.includes(code));
      fc.pre(grave.length === 0);
      judged += 1;
      const found = stringing(of, RULES, describePiece(of, RULES, 5000, usual(of)), 'left');
      expect(numbers(found).filter(([, value]) => Number.isNaN(value))).toEqual([]);
      expect(found.strands[0]?.rows.at(-1)?.toMm).toBeCloseTo(found.finishedLengthMm, 6);
    }),
    { numRuns },
  );
  expect(judged).toBe(numRuns);
});
