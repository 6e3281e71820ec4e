import { describe, expect, test } from 'vitest';
import { finishedLengthMm } from '#core/design/loopParts.ts';
import { claspEnd, lengthOfEnd, ringEnd } from '#draw/layout/closing.ts';
import { toParts, turnedRound } from '#draw/layout/spot.ts';
import { lengthOf, placeStraight } from '#draw/layout/straight.ts';
import { layRows } from '#draw/drawings/rows.ts';
import { pieces, usualSequences } from '../designs.ts';
import { overlapMm } from '../overlap.ts';
import { randomDesign } from '../random.ts';

const designs = [...pieces, ...Array.from({ length: 100 }, (_, seed) => randomDesign(seed))];

describe('a strand laid straight', () => {
  test.each(designs.map((design) => [design.id, design] as const))(
    '%s: neighbours touch, none overlap, the whole is as long as the strand',
    (_, design) => {
      for (const sequence of usualSequences(design)) {
        const spots = placeStraight(toParts(sequence), 0, 0);
        for (const [at, spot] of spots.entries()) {
          const next = spots[at + 1];
          if (next === undefined) continue;
          const apart = next.xMm - spot.xMm - (spot.component.alongMm + next.component.alongMm) / 2;
          expect(Math.abs(apart)).toBeLessThan(1e-9);
          expect(overlapMm(spot, next)).toBeLessThan(1e-9);
        }
        const whole =
          lengthOfEnd(claspEnd(design)) + lengthOf(toParts(sequence)) + lengthOfEnd(ringEnd(design));
        expect(whole).toBeCloseTo(finishedLengthMm(design, sequence), 9);
      }
    },
  );

  test('the findings reach from bearing point to bearing point', () => {
    for (const design of designs) {
      const sequences = usualSequences(design);
      const { rows } = layRows(design, sequences, 'left');
      for (const [at, row] of rows.entries()) {
        expect(row.toMm - row.fromMm).toBeCloseTo(finishedLengthMm(design, sequences[at] ?? []), 9);
        const left = Math.min(...row.closing.map((spot) => spot.xMm - spot.alongMm / 2));
        const loopEnd = at === 0 ? 0 : lengthOfEnd(claspEnd(design)) - design.ends.loopMm;
        expect(left).toBeCloseTo(loopEnd, 9);
      }
    }
  });

  test('a crimp inside its cover is not seen', () => {
    const [sequence] = usualSequences(pieces[0] as (typeof pieces)[number]);
    const kinds = toParts(sequence ?? []).map((part) => part.component.kind);
    expect(kinds.filter((kind) => kind === 'cover')).toHaveLength(2);
    expect(kinds).not.toContain('crimp');
  });

  test('turned round twice, a strand is itself', () => {
    for (const design of designs) {
      for (const sequence of usualSequences(design)) {
        const parts = toParts(sequence);
        expect(turnedRound(turnedRound(parts))).toEqual(parts);
        expect(turnedRound(parts)[0]?.component).toBe(parts.at(-1)?.component);
      }
    }
  });
});
