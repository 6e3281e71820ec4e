import { describe, expect, test } from 'vitest';
import { figureOf } from '#core/body/figure.ts';
import { loadOf } from '#core/body/load.ts';
import { nestLengths } from '#core/body/nest.ts';
import { nestingOf } from '#core/sizing/nest.ts';
import { usual } from '#core/sizing/usual.ts';
import { expand } from '#core/design/expand.ts';
import type { Design } from '#core/design/design.ts';
import { ENDS_MM, plain, run, type Line } from './plain.ts';

const nested = (lines: readonly Line[], nestGapMm: number): Design =>
  plain(lines, {}, { lie: 'nested', nestGapMm });

/** 400 and 440 mm of eights and ends; the outer one is 40 longer in her own piece. */
const lines: readonly Line[] = [
  { sections: [run('inner', 'b8', [50, 40, 60])] },
  { sections: [run('outer', 'b8', [55, 40, 70])] },
];

/** What `body/nest` says for two strands, the lowest beads being so far across. */
function hungMm(design: Design, firstMm: number, acrossMm: readonly [number, number]): number {
  const average = figureOf({ sex: 'unstated', neckGirthMm: null, heightMm: null });
  if (!average.ok) throw new Error('the average is no figure');
  const strands = expand(design, usual(design)).map((sequence, index) => ({
    load: loadOf(design, sequence, index),
    lowestAcrossMm: acrossMm[index]!,
  }));
  return nestLengths(strands, firstMm, design.nestGapMm, average.figure)[1]!;
}

describe('nested strands', () => {
  const wide = nestingOf(nested(lines, 20));

  test('the innermost is what is asked for', () => {
    expect(wide.targetMm(0, 431.234)).toBe(431.234);
    expect(wide.firstMm(0, 431.234)).toBeCloseTo(431.234, 6);
  });

  test('the outer is as long as it must be to hang clear, where her own piece is not longer', () => {
    const design = nested(lines, 20);
    const found = wide.targetMm(1, 430);
    expect(found).toBe(hungMm(design, 430, [8, 8]));
    expect(found).toBeGreaterThan(430 + 40);
  });

  test('and no less apart than in her own piece', () => {
    const close = nestingOf(nested(lines, 0));
    expect(hungMm(nested(lines, 0), 430, [8, 8])).toBeLessThan(470);
    expect(close.targetMm(1, 430)).toBe(470);
    expect(close.firstMm(1, 470)).toBeCloseTo(430, 9);
  });

  test('the gap is counted from the bead in the middle of each', () => {
    const big: Line = {
      sections: [
        run('left', 'b8', [26, 20, 30]),
        run('middle', 'b20', [1, 1, 1]),
        run('right', 'b8', [26, 20, 30]),
      ],
    };
    const design = nested([lines[0]!, big], 20);
    expect(nestingOf(design).targetMm(1, 430)).toBe(hungMm(design, 430, [8, 20]));
    expect(hungMm(design, 430, [8, 20])).toBeGreaterThan(hungMm(design, 430, [8, 8]) + 6);
  });

  test('which first strand asks this of another: back and forth is the same', () => {
    for (const mm of [100, 400, 431.23, 431.2345678, 520, 1800]) {
      expect(wide.firstMm(1, wide.targetMm(1, mm))).toBeCloseTo(mm, 6);
    }
  });

  test('a length that the other jumps over as the first comes to close round a neck asks for the first where it jumps', () => {
    let [low, high] = [300, 420];
    while (high - low > 1e-9) {
      const middle = (low + high) / 2;
      if (wide.targetMm(1, middle) < middle + 40 + 1e-6) low = middle;
      else high = middle;
    }
    const [under, over] = [wide.targetMm(1, low), wide.targetMm(1, high)];
    expect(over - under).toBeGreaterThan(5);
    for (const share of [0.01, 0.3, 0.7, 0.99]) {
      expect(wide.firstMm(1, under + share * (over - under))).toBeCloseTo(low, 6);
    }
  });

  test('hanging is worked out in hundredths of a millimetre, between two in proportion', () => {
    const [at, between, next] = [430, 430.0025, 430.01].map((mm) => wide.targetMm(1, mm));
    expect(next!).toBeGreaterThan(at!);
    expect(between).toBeCloseTo(at! + (next! - at!) / 4, 9);
  });

  test('too short for the neck, the strands stay as far apart as in her own piece', () => {
    expect(wide.targetMm(1, 100)).toBe(140);
  });
});

test('side by side, and a single strand, share what is asked', () => {
  for (const design of [plain(lines), nested(lines.slice(0, 1), 20)]) {
    const shared = nestingOf(design);
    expect(shared.targetMm(1, 430.001)).toBe(430.001);
    expect(shared.firstMm(1, 430.001)).toBe(430.001);
  }
});

test('the lengths are those of the whole strands', () => {
  const uneven = nested([lines[0]!, { sections: [run('outer', 'b20', [23, 20, 30])] }], 0);
  // 400 + ends and 460 + ends.
  expect(nestingOf(uneven).targetMm(1, ENDS_MM + 400)).toBeGreaterThanOrEqual(ENDS_MM + 460);
});
