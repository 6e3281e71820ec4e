/** The verifier accepts every answer, of one strand and of several, and finds every damage done to one. */
import { describe, expect, test } from 'vitest';
import { verifySizing } from '#core/verify/sizing.ts';
import { verifyCandidate } from '#core/verify/candidate.ts';
import type { Choice } from '#core/design/choice.ts';
import { range } from '#core/sizing/range.ts';
import { size } from '#core/sizing/size.ts';
import type { Candidate, Sizing } from '#core/sizing/sizing.ts';
import type { Design, PieceKind } from '#core/design/design.ts';
import { twoStrands } from '#tests/support/workshop.ts';
import { choose, damaged, fieldsOf, SAMPLES } from './answers.ts';
import { focalBracelet, rules, stocked } from '../designs.ts';
import { FIELDS } from './fields.ts';
import { askedMm, random, randomDesign, randomStrands, type Random } from '../random.ts';

const KINDS: readonly PieceKind[] = ['necklace', 'bracelet'];
const DESIGNS = process.env['CLASPWISE_THOROUGH'] ? 5000 : process.env['CLASPWISE_QUICK'] ? 40 : 100;

/** An answer to a size near what the design can be; null where it can't be sized at all. */
function someAnswer(of: Random, design: Design): Answer | null {
  const known = range(design, rules);
  if (known.status === 'refused') return null;
  const measured = design.kind === 'necklace' ? 'length' : 'wrist';
  const choice: Choice = {
    measure: { of: measured, mm: askedMm(measured, known.limits, 1.2 * of.next() - 0.1) },
    sit: of.pick(['snug', 'easy', 'loose']),
    hand: 'right',
    pick: of.pick(['best', 'below', 'above']),
    quantity: of.whole(1, 2),
  };
  const sizing = size(design, rules, 4800, choice);
  return sizing.status === 'refused' ? null : sizing;
}

type Answered = { readonly seed: number; readonly design: Design; readonly sizing: Answer };
type Answer = Exclude<Sizing, { status: 'refused' }>;

/** The answers to so many random designs: to find them takes longer than to look through them. */
function answersTo(make: typeof randomDesign): readonly Answered[] {
  return Array.from({ length: DESIGNS }, (_, at) => at + 1).flatMap((seed) => {
    const of = random(seed);
    const design = make(of, of.pick(KINDS), { sections: 2, repeats: 6 });
    const sizing = someAnswer(of, design);
    return sizing === null ? [] : [{ seed, design, sizing }];
  });
}

/** Of several strands many lie too far apart for one girth, and have no answer. */
describe.each([
  ['one strand', randomDesign, { answered: 0.9, each: 0.15, moved: 0.3 }],
  ['several strands', randomStrands, { answered: 0.4, each: 0.03, moved: 0.1 }],
] as const)('of %s', (_, make, shares) => {
  let found: readonly Answered[] | null = null;
  const answers = (): readonly Answered[] => (found ??= answersTo(make));

  test('accepts every answer', () => {
    const seen = { fits: 0, near: 0, outside: 0 };
    for (const { seed, design, sizing } of answers()) {
      seen[sizing.status] += 1;
      expect(verifySizing(design, sizing, { rules, listedMinor: 4800 }), `seed ${seed}`).toEqual([]);
    }
    expect(seen.fits + seen.near + seen.outside).toBeGreaterThan(shares.answered * DESIGNS);
    for (const count of Object.values(seen)) expect(count).toBeGreaterThan(shares.each * DESIGNS);
  });

  test('finds a strand that is a repeat off, and says which', () => {
    let tried = 0;
    for (const { seed, design, sizing } of answers()) {
      if (sizing.status === 'outside') continue;
      const index = design.strands.length - 1;
      const { best } = sizing;
      const counts = best.counts[index]!;
      const at = design.strands[index]!.sections.findIndex(
        ({ role, most }, section) => role !== 'focal' && counts[section]! < most,
      );
      if (at < 0) continue;
      tried += 1;
      const moved = { ...best, counts: best.counts.with(index, counts.with(at, counts[at]! + 1)) };
      const found = verifySizing(design, { ...sizing, best: moved });
      expect(found.length, `seed ${seed}`).toBeGreaterThan(0);
      expect(found.map((fault) => fault.at)).toContain(`strands.${index}`);
    }
    expect(tried).toBeGreaterThan(shares.moved * DESIGNS);
  });
});

describe('an answer’s every field', () => {
  test('has its row', () => {
    const fields = new Set(SAMPLES.flatMap(({ sizing }) => fieldsOf(sizing)));
    expect([...fields].filter((field) => !(field in FIELDS))).toEqual([]);
    expect(Object.keys(FIELDS).filter((field) => !fields.has(field))).toEqual([]);
  });

  const judged = Object.entries(FIELDS).flatMap(([field, row]) =>
    'code' in row ? [[field, row] as const] : [],
  );

  test.each(judged)('%s, damaged, is found', (field, { code, as }) => {
    const having = SAMPLES.filter(({ sizing }) => fieldsOf(sizing).includes(field));
    const found = having.some(({ design, sizing, priced }) =>
      verifySizing(design, damaged(sizing, field, as), priced).some((fault) => fault.code === code),
    );
    expect(found).toBe(true);
  });

  test('undamaged, nothing is found', () => {
    for (const { design, sizing, priced } of SAMPLES) {
      expect(verifySizing(design, sizing, priced)).toEqual([]);
    }
  });
});

describe('finds', () => {
  const sizing = size(focalBracelet, rules, 4800, choose('wrist', 165));
  if (sizing.status !== 'fits') throw new Error('the example must fit');
  const { best } = sizing;
  const strung = best.sequences[0]!;
  const swapped = strung.with(4, strung[5]!).with(5, strung[4]!);

  test.each<[string, Partial<Candidate>, string]>([
    ['a count beyond its most', { counts: [best.counts[0]!.with(1, 8)] }, 'counts'],
    ['a count that is none', { counts: [best.counts[0]!.with(2, 1.5)] }, 'counts'],
    ['a strand left out', { counts: [] }, 'counts'],
    ['changes left out', { changes: best.changes.slice(1) }, 'changes'],
    ['more chain than there is', { chainUsedMm: 5 }, 'chain'],
    ['two beads changed places', { sequences: [swapped] }, 'sequence'],
  ])('%s', (_, damage, code) => {
    const broken = { ...sizing, best: { ...best, ...damage } };
    expect(verifySizing(focalBracelet, broken).map((fault) => fault.code)).toContain(code);
  });

  test.each<[string, number, number]>([
    ['a least', 1, 0],
    ['a most', 0, 1],
    ['a most that is less', 0, -1],
  ])('%s of several strands that is none of theirs', (_, leastMm, mostMm) => {
    const both = size(twoStrands, rules, 4800, choose('wrist', 170));
    if (both.status === 'refused') throw new Error('the example must be sized');
    const { limits } = both;
    const moved = {
      ...limits,
      leastMm: limits.leastMm + leastMm,
      leastAskedMm: limits.leastAskedMm + leastMm,
      mostMm: limits.mostMm + mostMm,
      mostAskedMm: limits.mostAskedMm + mostMm,
    };
    const codes = verifySizing(twoStrands, { ...both, limits: moved }).map((fault) => fault.code);
    expect(codes).toEqual(['limits']);
  });

  test('another piece than the one picked', () => {
    const other = { ...sizing, chosen: { ...best } };
    expect(verifySizing(focalBracelet, other).map((fault) => fault.code)).toEqual(['pick']);
  });

  test('a piece that is one repeat short of a better one', () => {
    const dear = { ...best, counts: [best.counts[0]!.with(2, best.counts[0]![2]! + 1)] };
    const codes = verifySizing(focalBracelet, { ...sizing, best: dear }).map((fault) => fault.code);
    expect(codes).toContain('better');
  });

  test('a piece that the stock does not reach for', () => {
    const scarce = stocked(focalBracelet, { six: 5 });
    const codes = verifyCandidate(scarce, best, 1).map((fault) => fault.code);
    expect(codes).toContain('stock');
  });
});
