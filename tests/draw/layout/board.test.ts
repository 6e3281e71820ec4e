import { describe, expect, test } from 'vitest';
import { adviseHand } from '#core/sizing/hand/hand.ts';
import { boardOf } from '#core/instructions/board.ts';
import { rowsOf } from '#core/instructions/rows.ts';
import { layBoard } from '#draw/layout/board.ts';
import { pieces, usualSequences } from '../designs.ts';
import { overlapMm } from '../overlap.ts';
import { randomDesign } from '../random.ts';

const designs = [...pieces, ...Array.from({ length: 100 }, (_, seed) => randomDesign(seed))];

function piece(id: string) {
  const found = pieces.find((design) => design.id === id);
  if (found === undefined) throw new Error(`no piece ${id}`);
  return found;
}

describe('a piece on the board', () => {
  // The piece lies as seen on another person, so the board's left is the wearer's right (common practice, no source).
  test.each([
    ['right', 'left'],
    ['left', 'right'],
  ] as const)('for a %s hand the clasp lies on the %s', (hand, side) => {
    for (const id of ['focal', 'pendant']) {
      const design = piece(id);
      const advice = adviseHand(design, hand);
      expect(advice.boardSide).toBe(side);
      const { strands } = layBoard(design, usualSequences(design), advice.boardSide ?? 'left');
      const clasp = strands[0]?.closing.find(({ kind }) => kind === 'clasp');
      const ring = strands[0]?.closing.find(({ kind }) => kind === 'ring');
      const way = side === 'left' ? -1 : 1;
      expect(way * (clasp?.xMm ?? NaN)).toBeGreaterThan(20);
      expect(way * (ring?.xMm ?? NaN)).toBeLessThan(-20);
    }
  });

  test('the other hand sees the mirror image', () => {
    for (const design of designs) {
      const left = layBoard(design, usualSequences(design), 'left').strands;
      const right = layBoard(design, usualSequences(design), 'right').strands;
      for (const [at, strand] of left.entries()) {
        const mirrored = right[at]?.spots.toReversed() ?? [];
        expect(mirrored).toHaveLength(strand.spots.length);
        for (const [place, spot] of strand.spots.entries()) {
          const other = mirrored[place];
          expect(other?.component).toBe(spot.component);
          expect(Math.abs((other?.xMm ?? NaN) + spot.xMm)).toBeLessThan(0.01);
          expect(Math.abs((other?.yMm ?? NaN) - spot.yMm)).toBeLessThan(0.01);
        }
      }
    }
  });

  test('every edge of a straight one lies where the bench card says', () => {
    const straight = designs.filter((design) => {
      const { strands } = layBoard(design, usualSequences(design), 'left');
      return strands.every(({ groove }) => !groove.bent);
    });
    expect(straight.length).toBeGreaterThan(10);
    for (const design of straight) {
      const sequences = usualSequences(design);
      const { strands } = layBoard(design, sequences, 'left');
      for (const [at, { spots }] of strands.entries()) {
        const rows = rowsOf(design, sequences[at] ?? [], null);
        const board = boardOf(rows, 'left');
        const strung = rows.filter(({ kind }) => kind === 'strung');
        const beads = spots.filter(({ section }) => section !== 'end');
        const first = beads[0];
        const fromMm = (first?.xMm ?? NaN) - (first?.component.alongMm ?? NaN) / 2;
        expect(fromMm).toBeCloseTo((strung[0]?.fromMm ?? NaN) - board.zeroMm, 5);
      }
    }
  });

  test('an extender hangs outside the ring, and moves nothing else', () => {
    const plain = piece('balls');
    const extended = { ...plain, ends: { ...plain.ends, extenderMm: 40 } };
    for (const side of ['left', 'right'] as const) {
      const [before] = layBoard(plain, usualSequences(plain), side).strands;
      const [after] = layBoard(extended, usualSequences(extended), side).strands;
      const centres = (spots: readonly { xMm: number }[] = []) => spots.map(({ xMm }) => xMm.toFixed(6));
      expect(centres(after?.spots)).toEqual(centres(before?.spots));
      const chain = after?.closing.find(({ kind }) => kind === 'chain');
      const ring = after?.closing.find(({ kind }) => kind === 'ring');
      const apart = Math.abs((chain?.xMm ?? NaN) - (ring?.xMm ?? NaN));
      expect(apart).toBeCloseTo((40 + (ring?.alongMm ?? NaN)) / 2, 6);
      expect(Math.abs(chain?.xMm ?? NaN)).toBeGreaterThan(Math.abs(ring?.xMm ?? NaN));
    }
  });

  test('nothing overlaps in the bend by more than 0.15 mm', () => {
    const overlaps = designs.flatMap((design) =>
      layBoard(design, usualSequences(design), 'left').strands.flatMap(({ spots }) =>
        spots.slice(1).map((next, at) => overlapMm(spots[at] ?? next, next)),
      ),
    );
    expect(overlaps.length).toBeGreaterThan(2000);
    expect(Math.max(...overlaps)).toBeLessThan(0.15);
  });
});
