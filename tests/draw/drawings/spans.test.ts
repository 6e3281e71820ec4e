import { describe, expect, test } from 'vitest';
import { laySpans, numbersOf } from '#draw/drawings/spans.ts';
import { toParts, turnedRound } from '#draw/layout/spot.ts';
import { placeStraight } from '#draw/layout/straight.ts';
import { pieces, usualSequences } from '../designs.ts';

const sequences = pieces.flatMap(usualSequences);

describe('numbers of beads', () => {
  test('count from the clasp what is strung and nothing else, whichever way the strand lies', () => {
    for (const sequence of sequences) {
      const parts = toParts(sequence);
      const numbers = numbersOf(parts);
      expect(numbersOf(turnedRound(parts))).toEqual(numbers);
      const strung = parts.filter(({ section }) => section !== 'end');
      expect(strung.map(({ index }) => numbers.get(index))).toEqual(strung.map((_, at) => at + 1));
      expect(numbers.size).toBe(strung.length);
    }
  });

  test('stand over their beads, and no two on one line run into each other', () => {
    for (const sequence of sequences) {
      const parts = toParts(sequence);
      const spots = placeStraight(parts, 0, 0);
      const count = numbersOf(parts).size;
      const single = Array.from({ length: count }, (_, at) => ({ first: at + 1, last: at + 1 }));
      const { brackets, heightMm } = laySpans(single, numbersOf(parts), spots, 3);
      expect(brackets).toHaveLength(count);
      expect(heightMm).toBeLessThanOrEqual(3 * 3.5);
      for (const [at, one] of brackets.entries()) {
        expect(one.toMm).toBeGreaterThan(one.fromMm);
        for (const other of brackets.slice(at + 1)) {
          if (one.line === null || one.line !== other.line) continue;
          const apart = Math.abs((one.fromMm + one.toMm - other.fromMm - other.toMm) / 2);
          expect(apart).toBeGreaterThan(((one.label.length + other.label.length) * 3 * 0.56) / 2 - 1e-9);
        }
      }
    }
  });

  test('of a span that ends beyond these beads bracket what is here; of none there is no room taken', () => {
    const parts = toParts(sequences[0] ?? []);
    const spots = placeStraight(parts, 0, 0);
    const [bracket] = laySpans([{ first: 2, last: 9999 }], numbersOf(parts), spots, 3).brackets;
    expect(bracket?.label).toBe('2–9999');
    expect(laySpans([{ first: 9998, last: 9999 }], numbersOf(parts), spots, 3)).toMatchObject({
      heightMm: 0,
    });
  });
});
