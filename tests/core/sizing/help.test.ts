import { describe, expect, test } from 'vitest';
import type { Choice } from '#core/design/choice.ts';
import { size } from '#core/sizing/size.ts';
import type { Help } from '#core/sizing/sizing.ts';
import type { Design } from '#core/design/design.ts';
import { section } from '../designs.ts';
import { asking, ENDS_MM, plain, run, within } from './plain.ts';

/** What helps a piece to a length of so many millimetres of beads. */
function helpFor(
  piece: Design,
  beadsMm: number,
  toleranceMm = 0.5,
  over: Partial<Choice> = {},
): readonly Help[] {
  const sizing = size(piece, within(toleranceMm), 4800, asking(ENDS_MM + beadsMm, over));
  if (sizing.status === 'refused') throw new Error(sizing.problem.code);
  return sizing.help;
}

const add = (component: string, count: number, offMm = 0, sides: 1 | 2 = 1, strand = 0): Help => ({
  code: 'add-component',
  strand,
  component,
  count,
  sides,
  offMm,
});
const widen = (id: string, repeats: number, offMm = 0, strand = 0): Help => ({
  code: 'widen-section',
  strand,
  section: id,
  repeats,
  offMm,
});

describe('a piece too short at its most', () => {
  // 40 to 60 beads of 6 mm: 360 mm at the most.
  const sixes = plain([{ sections: [run('run', 'b6', [50, 40, 60])] }]);

  test('takes up to four more beads at the clasp, or the section goes up to three beyond its most', () => {
    expect(helpFor(sixes, 366)).toEqual([add('b6', 1), widen('run', 1)]);
    expect(helpFor(sixes, 378)).toEqual([add('b6', 3), widen('run', 3)]);
    expect(helpFor(sixes, 384)).toEqual([add('b6', 4)]);
    expect(helpFor(sixes, 390)).toEqual([]);
  });

  test('says how far each comes off: below 0 where it stays short', () => {
    expect(helpFor(sixes, 366.4)).toEqual([add('b6', 1, -0.4), widen('run', 1, -0.4)]);
    expect(helpFor(sixes, 365.6)).toEqual([add('b6', 1, 0.4), widen('run', 1, 0.4)]);
  });

  test('helps only within tolerance, to the hundredth of a millimetre', () => {
    expect(helpFor(sixes, 366.5)).toEqual([add('b6', 1, -0.5), widen('run', 1, -0.5)]);
    expect(helpFor(sixes, 366.504)).toHaveLength(2);
    expect(helpFor(sixes, 366.506)).toEqual([]);
  });

  test('mirrored: the same on both sides', () => {
    const pair = plain([{ sections: [run('run', 'b6', [25, 20, 30])], mirrored: true }]);
    expect(helpFor(pair, 372)).toEqual([add('b6', 1, 0, 2), widen('run', 1)]);
  });

  test('two of a sort at the most, the nearest first', () => {
    const longer = plain([
      {
        sections: [
          run('two', 'b2', [50, 50, 50]),
          run('four', 'b4', [20, 20, 20]),
          run('three', 'b3', [20, 20, 20]),
        ],
      },
    ]);
    // 240 mm. For 7.6 more: two 4s are 0.4 over, three 2s or two 3s 1.6 short.
    expect(helpFor(longer, 247.6, 2)).toEqual([
      add('b4', 2, 0.4),
      add('b2', 3, -1.6),
      widen('four', 2, 0.4),
      widen('two', 3, -1.6),
    ]);
    // Within half a millimetre the 3s are out.
    expect(helpFor(longer, 247.6)).toEqual([add('b2', 4, 0.4), add('b4', 2, 0.4), widen('four', 2, 0.4)]);
  });

  test('only beads and spacers are added, each kind once', () => {
    const capped = plain([
      {
        sections: [
          section(
            'run',
            [
              { component: 'cap', count: 1 },
              { component: 'spacer', count: 2 },
              { component: 'b2', count: 1 },
            ],
            [30, 30, 30],
          ),
        ],
      },
    ]);
    // 30 × (5 + 3 + 2) = 300 mm. Five more: a cap would do, three spacers are 0.5 short.
    expect(helpFor(capped, 305)).toEqual([add('spacer', 3, -0.5)]);
  });
});

describe('a piece too long at its fewest', () => {
  test('lets a section go below its fewest, but not below none; nothing is added', () => {
    const sixes = plain([{ sections: [run('run', 'b6', [50, 40, 60]), run('some', 'b8', [2, 1, 3])] }]);
    expect(helpFor(sixes, 236)).toEqual([widen('run', -2)]);
    expect(helpFor(sixes, 230)).toEqual([widen('run', -3)]);
    expect(helpFor(sixes, 240)).toEqual([widen('some', -1)]);
    // Two 8s fewer would do, but there is one only.
    expect(helpFor(sixes, 232)).toEqual([]);
  });
});

describe('a piece that meets neither side', () => {
  test('is helped from below and from above', () => {
    // 20 mm a repeat, 10 to 16 of them; 3 mm beads beside it that don't change.
    const steps = plain([{ sections: [run('big', 'b20', [12, 10, 16]), run('few', 'b3', [4, 4, 4])] }]);
    // Between 12 + 12 × 20 and 12 + 13 × 20: five more than the lower, two 3s are 1 over.
    expect(helpFor(steps, 257, 1)).toEqual([add('b3', 2, 1), widen('few', 2, 1)]);
    // Fifteen more than the lower, five short of the upper: two 3s fewer than the upper are 1 short.
    expect(helpFor(steps, 267, 1)).toEqual([widen('few', -2, -1)]);
  });

  test('a focal is left as it is', () => {
    const focal = plain([
      { sections: [run('focal', 'b20', [1, 1, 1], 'focal'), run('run', 'b6', [20, 20, 20])], mirrored: true },
    ]);
    // 20 + 240. A second focal would do.
    expect(helpFor(focal, 280)).toEqual([]);
  });
});

test('what stands in the middle alone is not offered at the clasp', () => {
  const focal = plain([
    { sections: [run('middle', 'b4', [1, 1, 1], 'focal'), run('run', 'b20', [5, 4, 5])], mirrored: true },
  ]);
  const offered = helpFor(focal, 4 + 200 + 8).flatMap((one) =>
    one.code === 'add-component' ? [one.component] : [],
  );
  expect(offered).toEqual([]);
  const also = plain([
    {
      sections: [
        run('middle', 'b4', [1, 1, 1], 'focal'),
        run('run', 'b20', [5, 4, 5]),
        run('end', 'b4', [1, 1, 1]),
      ],
      mirrored: true,
    },
  ]);
  expect(helpFor(also, 4 + 200 + 8 + 8)).toContainEqual(add('b4', 1, 0, 2));
});

describe('a piece that the stock keeps short', () => {
  const sixes = [{ sections: [run('run', 'b6', [40, 40, 60])] }];

  test('names what is wanting of every component, for all pieces', () => {
    const scarce = plain(sixes, { b6: 45 });
    expect(helpFor(scarce, 300)).toContainEqual({ code: 'more-stock', component: 'b6', count: 5 });
    expect(helpFor(plain(sixes, { b6: 91 }), 300, 0.5, { quantity: 2 })).toContainEqual({
      code: 'more-stock',
      component: 'b6',
      // 100 for both; one of the 91 was over.
      count: 9,
    });
  });

  test('names none where no stock would do, and none that reaches', () => {
    const two = plain([{ sections: [run('run', 'b6', [40, 40, 60]), run('end', 'b4', [1, 1, 1])] }], {
      b6: 45,
      b4: 1,
    });
    expect(helpFor(two, 304)[0]).toEqual({ code: 'more-stock', component: 'b6', count: 5 });
    expect(helpFor(two, 304).filter(({ code }) => code === 'more-stock')).toHaveLength(1);
    expect(helpFor(two, 600)).toEqual([]);
    // The fours may run out, from one to five of three, and one is all that is used.
    const one = plain([{ sections: [run('run', 'b6', [40, 40, 60]), run('end', 'b4', [1, 1, 5])] }], {
      b6: 45,
      b4: 1,
    });
    expect(helpFor(one, 304).filter(({ code }) => code === 'more-stock')).toEqual([
      { code: 'more-stock', component: 'b6', count: 5 },
    ]);
    expect(helpFor(plain(sixes), 372).map(({ code }) => code)).toEqual(['add-component', 'widen-section']);
  });
});

test('of several strands the one is helped that falls short', () => {
  const two = plain([
    { sections: [run('long', 'b6', [50, 40, 60])] },
    { sections: [run('short', 'b8', [40, 30, 43])] },
  ]);
  // 360 mm: the sixes reach it, the eights end at 344.
  expect(helpFor(two, 360)).toEqual([add('b8', 2, 0, 1, 1), widen('short', 2, 0, 1)]);
});

test('nothing is suggested to a piece that fits', () => {
  const sixes = plain([{ sections: [run('run', 'b6', [50, 40, 60])] }]);
  expect(helpFor(sixes, 300)).toEqual([]);
});
