/** Whether the hands notice a wrong card: every step of many cards is damaged in every way. */
import { expect, it } from 'vitest';
import type { Row } from '#core/instructions/rows.ts';
import { carryOut } from './hands/carryOut.ts';
import { damagesAt } from './hands/damage.ts';
import { randomWork } from './hands/designs.ts';

/** 40 cards, seven thousand damages; ten times as many where CLASPWISE_THOROUGH is set. */
const CARDS = process.env['CLASPWISE_THOROUGH'] ? 600 : 40;

/** What is looked at or made ready, which may be done again without harm, and before or after one another. */
const READY = ['wear-eye-protection', 'try-clasp', 'join-chain', 'join-ring', 'check-facing', 'lay-out'];
const LOOKS = ['check-loop', 'measure', 'check-pattern'];
const pairs = (codes: readonly string[]): string[] =>
  codes.flatMap((one) => codes.map((other) => `swap ${one}, ${other}`));

/** Damages that no hand need notice, since the piece comes out as it should. */
const HARMLESS: ReadonlySet<string> = new Set([
  ...READY.filter((code) => code !== 'join-ring').map((code) => `twice ${code}`),
  ...LOOKS.map((code) => `twice ${code}`),
  ...READY.map((code) => `early ${code}`),
  ...pairs(READY),
  ...pairs(LOOKS),
  // Where the tail runs through all there is, the other end may be threaded first.
  'swap cut-tail, thread-end',
  // A tail that leaves a bead far from the cover may be cut after it is closed.
  'swap cut-tail, close-cover',
  // The next strand's wire may be cut while the last stitch of this one waits.
  'early cut-wire',
  'swap close-cover, cut-wire',
  'swap cut-tail, cut-wire',
  // More wire than needed is waste, not harm.
  'more cut-wire.lengthMm',
]);

/** Noticed unless a tail is stopped by a narrow bead: what it doesn't need then makes up for the slip. */
const MADE_UP_FOR = ['less cut-wire.lengthMm', 'more lead-back.outMm', 'less lead-back.outMm'];

/** Some of what hands can't do, each met among the damages. */
const WHY = [
  'is full',
  'slide off',
  'threaded already',
  'the wire isn’t led back',
  'to measure by',
  'the wire is too short',
  'measure and read first',
  'joined already',
  'isn’t joined yet',
  'beads are on, not',
  'no room for the cover',
  'the tail stands in the way',
];

/** Rows that count: one more or less of one, two changed about. */
function wrongLists(rows: readonly Row[]): Row[][] {
  const counts = ({ kind }: Row): boolean => kind === 'strung' || kind === 'pendant';
  return rows.flatMap((row, at) => {
    if (!counts(row)) return [];
    const next = rows[at + 1];
    const isOther = next !== undefined && counts(next) && next.component !== row.component;
    return [
      rows.with(at, { ...row, count: row.count + 1 }),
      rows.with(at, { ...row, count: row.count - 1 }),
      ...(isOther ? [rows.with(at, next).with(at + 1, row)] : []),
    ];
  });
}

it('a step left out, changed about or wrong in a figure is noticed, but for what does no harm', () => {
  const missed = new Map<string, number>();
  const done = new Map<string, number>();
  const reasons: string[] = [];
  let damages = 0;
  let cards = 0;
  for (let seed = 1; cards < CARDS; seed += 1) {
    const work = randomWork(seed);
    if (work === null) continue;
    cards += 1;
    const { steps } = work.card;
    for (const { what, steps: damaged } of steps.flatMap((_, at) => damagesAt(steps, at))) {
      damages += 1;
      done.set(what, (done.get(what) ?? 0) + 1);
      const found = carryOut(work, damaged);
      if (found === null) missed.set(what, (missed.get(what) ?? 0) + 1);
      else reasons.push(found);
    }
  }
  const grave = [...missed.keys()].filter((what) => !HARMLESS.has(what) && !MADE_UP_FOR.includes(what));
  expect(grave).toEqual([]);
  for (const what of MADE_UP_FOR)
    expect((missed.get(what) ?? 0) / (done.get(what) ?? 0), what).toBeLessThan(0.5);
  const unnoticed = [...missed.values()].reduce((sum, times) => sum + times, 0);
  expect(damages).toBeGreaterThan(100 * CARDS);
  expect(unnoticed / damages).toBeLessThan(0.12);
  // What is left out is always noticed.
  expect([...missed.keys()].filter((what) => what.startsWith('drop'))).toEqual([]);
  for (const why of WHY)
    expect(
      reasons.some((reason) => reason.includes(why)),
      why,
    ).toBe(true);
});

it('a list that is wrong in one row is noticed, wherever the row stands', () => {
  let damages = 0;
  for (let seed = 1; damages < 20 * CARDS; seed += 1) {
    const work = randomWork(seed);
    if (work === null) continue;
    for (const [strand, { rows }] of work.card.strands.entries()) {
      for (const damaged of wrongLists(rows)) {
        damages += 1;
        const strands = work.card.strands.with(strand, { ...work.card.strands[strand]!, rows: damaged });
        expect(carryOut({ ...work, card: { ...work.card, strands } }), `seed ${seed}`).not.toBeNull();
      }
    }
  }
});
