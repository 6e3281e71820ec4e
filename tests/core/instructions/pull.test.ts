/** The static pull that an end bears, against masses added by hand. Standard gravity: 9.80665 m/s², 3rd CGPM (1901). */
import { describe, expect, it } from 'vitest';
import { massOf } from '#core/design/mass/mass.ts';
import { usual } from '#core/sizing/usual.ts';
import { expand } from '#core/design/expand.ts';
import type { Design } from '#core/design/design.ts';
import type { Placed } from '#core/design/expand.ts';
import { pullOf } from '#core/instructions/pull.ts';
import { rowsOf } from '#core/instructions/rows.ts';
import { design, pendantNecklace, section, strand, twoStrands } from '#tests/support/workshop.ts';

const NEWTONS_PER_GRAM = 0.00980665;
const sequencesOf = (of: Design): Placed[][] => expand(of, usual(of));
const grams = (of: Design, id: string | null): number => {
  const found = id === null ? undefined : of.components[id];
  return found === undefined ? 0 : massOf(found).massG;
};
const strungG = (sequence: readonly Placed[]): number =>
  sequence.reduce((sum, { component }) => sum + massOf(component).massG, 0);
const closedByG = (of: Design): number => grams(of, of.ends.clasp) + grams(of, of.ends.ring);

describe('what isn’t a necklace is held up by one end', () => {
  it('strand and closing', () => {
    const of = design();
    const [sequence = []] = sequencesOf(of);
    const wanted = (strungG(sequence) + closedByG(of)) * NEWTONS_PER_GRAM;
    expect(pullOf(of, [sequence])).toBeCloseTo(wanted, 9);
  });

  it('a pendant hangs from the first strand alone', () => {
    const of = { ...twoStrands, hanging: pendantNecklace.hanging };
    const sequences = sequencesOf(of);
    const pendantG =
      grams(of, of.hanging?.pendant ?? null) +
      (of.hanging?.rings ?? []).reduce((sum, ring) => sum + grams(of, ring), 0);
    expect(pendantG).toBeGreaterThan(1);
    const each = sequences.map(
      (sequence, at) => strungG(sequence) + closedByG(of) + (at === 0 ? pendantG : 0),
    );
    expect(pullOf(of, sequences)).toBeCloseTo(Math.max(...each) * NEWTONS_PER_GRAM, 9);
    // The other way about the heavier strand no longer has it.
    const [first = [], second = []] = sequences;
    expect(pullOf(of, [[], second])).toBeCloseTo(
      Math.max(pendantG + closedByG(of), strungG(second) + closedByG(of)) * NEWTONS_PER_GRAM,
      9,
    );
    expect(pullOf(of, [first])).toBeCloseTo((each[0] ?? 0) * NEWTONS_PER_GRAM, 9);
  });
});

describe('a necklace', () => {
  it('shares its weight between both sides: less than held up by one', () => {
    const sequences = sequencesOf(pendantNecklace);
    const hung = pullOf(pendantNecklace, sequences);
    const heldUp = pullOf({ ...pendantNecklace, kind: 'collar' }, sequences);
    expect(hung).toBeGreaterThan(0);
    expect(hung).toBeLessThan(0.8 * heldUp);
  });

  it('too short for the neck is held up like anything else', () => {
    const short = { ...design({ kind: 'necklace' }), strands: [strand([section('run', [['ball-8', 1]])])] };
    const sequences = sequencesOf(short);
    expect(pullOf(short, sequences)).toBeCloseTo(pullOf({ ...short, kind: 'collar' }, sequences), 12);
  });

  it('of nothing pulls at nothing', () => {
    expect(pullOf(design(), [])).toBe(0);
  });
});

it('rows name the side that each end lies on', () => {
  const of = design();
  const rows = rowsOf(of, sequencesOf(of)[0] ?? [], null);
  const sides = rows.filter(({ kind }) => kind !== 'strung').map(({ kind, side }) => `${kind} ${side}`);
  expect(sides.slice(0, 2)).toEqual(['clasp left', 'loop left']);
  expect(sides.slice(-2)).toEqual(['loop right', 'ring right']);
});

it('covers and crimps at an end stay rows of their own, however alike', () => {
  const of = design({ ends: { ...design().ends, cover: 'crimp' } });
  const rows = rowsOf(of, sequencesOf(of)[0] ?? [], null);
  expect(rows.filter(({ kind }) => kind === 'end').map(({ count }) => count)).toEqual([1, 1, 1, 1]);
});
