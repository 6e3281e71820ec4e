import { describe, expect, test } from 'vitest';
import { jobOf } from '#core/sizing/job.ts';
import { planPiece } from '#core/sizing/plan.ts';
import { range } from '#core/sizing/range.ts';
import { size } from '#core/sizing/size.ts';
import { sizeChecked } from '#core/sizing/sizeChecked.ts';
import type { Sizing } from '#core/sizing/sizing.ts';
import { describe as describePiece, usual } from '#core/sizing/usual.ts';
import type { Design } from '#core/design/design.ts';
import { ball, design, focalBracelet, rules, section, strand } from '../designs.ts';
import { asking, ENDS_MM, plain, run, within } from './plain.ts';

const sized = (piece: Design, beadsMm: number, toleranceMm = 1, quantity = 1): Sizing =>
  size(piece, within(toleranceMm), 4800, asking(ENDS_MM + beadsMm, { quantity }));

/** Twenties: 200, 220, 240. Eights: 208 to 240. */
const two = plain([
  { sections: [run('twenties', 'b20', [11, 10, 12])] },
  { sections: [run('eights', 'b8', [28, 26, 30])] },
]);

describe('several strands, each for itself', () => {
  test('all within: it fits', () => {
    expect(sized(two, 220, 4)).toMatchObject({
      status: 'fits',
      best: { counts: [[11], [28]] },
      proven: true,
    });
    expect(sized(two, 240, 1)).toMatchObject({ status: 'fits', best: { withinTolerance: true } });
  });

  test.each([
    ['the second', 220, -4],
    ['the first', 232, 8],
  ])('%s only is off: near, and not within', (_, beadsMm, errorMm) => {
    const near = sized(two, beadsMm);
    expect(near).toMatchObject({ status: 'near', best: { withinTolerance: false } });
    if (near.status !== 'near') return;
    expect(Math.abs(near.best.errorMm)).toBe(Math.abs(errorMm));
  });

  test('below and above are so of every strand that isn’t within', () => {
    // Between 220 and 240, between 224 and 232.
    expect(sized(two, 229)).toMatchObject({
      status: 'near',
      best: { counts: [[11], [29]], errorMm: -9 },
      below: { counts: [[11], [28]], errorMm: -9 },
      above: { counts: [[12], [29]], errorMm: 11 },
    });
  });

  test('of two as far off the first is told', () => {
    const far = plain([
      { sections: [run('a', 'b6', [50, 50, 50])] },
      { sections: [run('b', 'b6', [51, 51, 51])] },
    ]);
    expect(sized(far, 303, 3)).toMatchObject({ status: 'fits', best: { errorMm: -3 } });
    expect(sized({ ...far, strands: far.strands.toReversed() }, 303, 3)).toMatchObject({
      best: { errorMm: 3 },
    });
  });

  test('one that can’t follow puts the whole piece outside, on its side', () => {
    const short = plain([
      { sections: [run('sixes', 'b6', [50, 40, 60])] },
      { sections: [run('eights', 'b8', [40, 38, 43])] },
    ]);
    expect(sized(short, 354)).toMatchObject({
      status: 'outside',
      side: 'above',
      nearest: { counts: [[59], [43]] },
    });
    expect(sized(short, 294)).toMatchObject({
      status: 'outside',
      side: 'below',
      nearest: { counts: [[49], [38]] },
    });
  });

  test('a strand beyond its most has a piece below, none above', () => {
    const job = jobOf(two, within(1), 1);
    const plan = (mm: number): unknown => planPiece(job, ENDS_MM + mm);
    const most = { counts: [[12], [30]] };
    expect(plan(260)).toMatchObject({ status: 'outside', side: 'above', best: most });
    const least = { counts: [[10], [26]] };
    expect(plan(180)).toMatchObject({ status: 'outside', side: 'below', best: least });
  });
});

describe('several strands out of one stock', () => {
  const shared = (stock: number): Design =>
    plain(
      [{ sections: [run('one', 'b6', [45, 40, 60])] }, { sections: [run('other', 'b6', [45, 42, 60])] }],
      {
        b6: stock,
      },
    );

  test('what is scarce is shared out so that the one furthest off is as near as can be', () => {
    // 95 of the 100 that both need: 18 and 12 mm short, not one right and the other 30 mm short.
    expect(sized(shared(95), 300)).toMatchObject({ status: 'outside', nearest: { counts: [[47], [48]] } });
    // 282 and 288 mm would do as well, and so would less change: 46 and 47.
    expect(sized(shared(95), 285, 3)).toMatchObject({ status: 'fits', best: { counts: [[47], [47]] } });
    expect(sized(shared(100), 300)).toMatchObject({ status: 'fits', best: { counts: [[50], [50]] } });
  });

  test('each keeps its fewest', () => {
    expect(sized(shared(83), 300, 3)).toMatchObject({ nearest: { counts: [[41], [42]] } });
  });

  test('and of several pieces each its share', () => {
    expect(sized(shared(191), 300, 1, 2)).toMatchObject({ nearest: { counts: [[47], [48]] } });
    expect(sized(shared(200), 300, 1, 2)).toMatchObject({ status: 'fits' });
  });

  test('short of the fewest of both, it is refused', () => {
    expect(sized(shared(81), 300)).toEqual({
      status: 'refused',
      problem: { code: 'stock', component: 'b6', have: 81, need: 82 },
    });
    expect(sized(shared(82), 240, 20)).toMatchObject({ status: 'fits' });
  });
});

describe('what the sizes of a piece are asked by', () => {
  test.each(['bracelet', 'anklet', 'collar'] as const)('%s: the girth less what the sit adds', (kind) => {
    const found = range({ ...focalBracelet, kind }, rules);
    if (found.status !== 'known') throw new Error('it is sound');
    const { limits, intervals, body } = found;
    expect(limits.leastAskedMm).toBeCloseTo(limits.leastMm - rules.easeMm[kind].easy, 9);
    expect(limits.mostAskedMm).toBeCloseTo(limits.mostMm - rules.easeMm[kind].easy, 9);
    expect(found.toleranceMm).toBe(rules.toleranceMm[kind]);
    for (const sit of ['snug', 'easy', 'loose'] as const) {
      const ease = rules.easeMm[kind][sit];
      expect(body[sit]).toEqual(
        intervals.map(({ fromMm, toMm }) => ({ fromMm: fromMm - ease, toMm: toMm - ease })),
      );
    }
  });
});

describe('too large to search', () => {
  /** Ten sections alike: half take one bead, half another. There is enough of either for any length, and not of both. */
  const torn = (): Design => {
    const beads = ['a', 'b'].map((id) => ({ ...ball(id, 4), stock: 35 }));
    const sections = Array.from({ length: 10 }, (_, at) =>
      section(`s${at}`, [{ component: at < 5 ? 'a' : 'b', count: 1 }], [0, 0, 9]),
    );
    return design('necklace', [strand('s', sections, false)], beads);
  };
  /** Two beads of lengths without a common step, many of each: at no tolerance their sizes are past counting, and each is found at once. */
  const incommensurable = (): Design => {
    const beads = [ball('whole', 3), ball('odd', 2 + Math.SQRT2)];
    const sections = beads.map(({ id }) => section(id, [{ component: id, count: 1 }], [10, 0, 150]));
    return design('necklace', [strand('s', sections, false)], beads);
  };
  const refused = {
    status: 'refused',
    problem: { code: 'search-limit' },
  };

  test('is refused: no answer is claimed', () => {
    expect(size(torn(), within(0), 4800, asking(ENDS_MM + 282))).toEqual(refused);
    expect(range(incommensurable(), within(0))).toEqual(refused);
  });

  test('any other fault of a design that nobody checked is not taken for it', () => {
    const unchecked = { ...focalBracelet, strands: null } as unknown as Design;
    const wrist = asking(0, { measure: { of: 'wrist', mm: 165 } });
    expect(() => sizeChecked(unchecked, rules, 4800, wrist)).toThrow(TypeError);
  });
});

test('the listed piece costs what is listed', () => {
  expect(describePiece(focalBracelet, rules, 4800, usual(focalBracelet)).priceMinor).toBe(4800);
});

test('a fault is told once', () => {
  const gapless = { ...two, nestGapMm: -1 };
  expect(size(gapless, within(1), 4800, asking(300))).toEqual({
    status: 'refused',
    problem: { code: 'design', problems: [expect.objectContaining({ at: 'nestGapMm' }) as object] },
  });
});
