import { expect, test } from 'vitest';
import { range } from '#core/sizing/range.ts';
import type { Rules } from '#core/design/rules.ts';
import { size } from '#core/sizing/size.ts';
import { choose } from '../verify/answers.ts';
import { necklace, rules, tubeBracelet } from '../designs.ts';

test('at no tolerance a range is single sizes, each of them met', () => {
  const exact: Rules = { ...rules, toleranceMm: { necklace: 0, bracelet: 0, anklet: 0, collar: 0 } };
  for (const [piece, of] of [
    [necklace, 'length'],
    [tubeBracelet, 'wrist'],
  ] as const) {
    const known = range(piece, exact);
    if (known.status !== 'known') throw new Error('the range must be known');
    expect(known.intervals.length).toBeGreaterThan(5);
    const asked = of === 'length' ? known.intervals : known.body.easy;
    for (const { fromMm, toMm } of asked) {
      expect(toMm - fromMm).toBeLessThan(0.02);
      expect(size(piece, exact, 4800, choose(of, fromMm))).toMatchObject({ status: 'fits' });
    }
  }
});
