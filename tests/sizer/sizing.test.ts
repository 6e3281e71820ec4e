/** The island's model: state, outcome, unit, memory and slider. */
import { AS_DESIGNED, MEASURES_OF_KIND } from '#core/design/choice.ts';
import { describe, expect, test } from 'vitest';
import { netChange } from '#sizer/model/changes.ts';
import { limitsOf } from '#sizer/model/limits.ts';
import { outcomeOf } from '#sizer/model/answer.ts';
import { canOrder, shownOf, sizedOf } from '#sizer/model/outcome.ts';
import { keepUnit } from '#sizer/model/keptSize.ts';
import type { Store } from '#sizer/model/ports.ts';
import { recall, remember } from '#sizer/model/remember.ts';
import { rewrite } from '#sizer/model/rewrite.ts';
import { sliderMm, sliderRange } from '#sizer/model/slider.ts';
import { reduce, startOf, type SizerState } from '#sizer/model/sizerState.ts';
import {
  design,
  focalBracelet,
  pendantNecklace,
  section,
  strand,
  withComponent,
} from '#tests/support/workshop.ts';
import { bracelet, memoryStore, pieceOf } from './support.ts';

const start = startOf('bracelet', 'in');
const written = (text: string, more: Partial<SizerState> = {}): SizerState => ({ ...start, ...more, text });
const outcome = (text: string, more: Partial<SizerState> = {}) => outcomeOf(bracelet, written(text, more));

describe('state', () => {
  test('a unit that is written becomes the buyer’s unit', () => {
    expect(reduce(start, { type: 'write', text: '165 mm' }).unit).toBe('cm');
    expect(reduce({ ...start, unit: 'cm' }, { type: 'write', text: '6½ in' }).unit).toBe('in');
    expect(reduce(start, { type: 'write', text: 'six' }).unit).toBe('in');
  });

  test('a new measure or sit forgets the pick; a new hand keeps it', () => {
    const picked = reduce(written('6.5'), { type: 'pick', pick: 'below' });
    expect(picked.pick).toBe('below');
    expect(reduce(picked, { type: 'hand', hand: 'left' }).pick).toBe('below');
    expect(reduce(picked, { type: 'write', text: '7' }).pick).toBe('best');
    expect(reduce(picked, { type: 'sit', sit: 'snug' }).pick).toBe('best');
  });

  test('going by another measure empties the field', () => {
    const neck = reduce({ ...startOf('necklace', 'in'), text: '17' }, { type: 'by', of: 'neck' });
    expect(neck).toMatchObject({ of: 'neck', text: '' });
  });

  test('only necklaces go by length', () => {
    expect(MEASURES_OF_KIND['necklace']).toEqual(['length', 'neck']);
    expect([MEASURES_OF_KIND['bracelet'], MEASURES_OF_KIND['anklet'], MEASURES_OF_KIND['collar']]).toEqual([
      ['wrist'],
      ['ankle'],
      ['neck'],
    ]);
  });
});

describe('outcome', () => {
  test('nothing written is the piece as it is in the shop', () => {
    const listed = outcome('  ');
    expect(listed.kind).toBe('listed');
    expect(shownOf(listed)?.changes).toEqual([]);
    expect(canOrder(listed)).toBe(false);
  });

  test.each(['6 1/2', '6½ in', '6.5', '16.51 cm', '165.1mm', '6,5'])(
    '%s is one and the same wrist',
    (text) => {
      const sizing = sizedOf(outcome(text));
      expect(sizing?.choice.measure.mm).toBeCloseTo(165.1, 9);
      expect(sizing?.status).toBe('fits');
      expect(canOrder(outcome(text))).toBe(true);
    },
  );

  test('the inside girth meets the wrist and the ease of the sit within tolerance', () => {
    for (const [sit, ease] of [
      ['snug', 6],
      ['easy', 14],
      ['loose', 25],
    ] as const) {
      const shown = shownOf(outcome('165.1 mm', { sit }));
      expect(Math.abs((shown?.insideGirthMm ?? 0) - 165.1 - ease)).toBeLessThanOrEqual(3);
    }
  });

  test.each([
    ['six', 'not-a-number'],
    ['-6', 'not-positive'],
    ['0', 'not-positive'],
    ['6 ells', 'unknown-unit'],
    ['5000 in', 'too-large'],
    ['6 to 7 in', 'two-measures'],
  ])('%s is refused as %s and can’t be ordered', (text, code) => {
    const refused = outcome(text);
    expect(refused.kind === 'unread' && refused.problem.code).toBe(code);
    expect(shownOf(refused)).toBeNull();
    expect(canOrder(refused)).toBe(false);
  });

  test('centimetres written into a field of inches are offered as centimetres', () => {
    const absurd = outcome('16.5');
    expect(absurd.kind === 'sized' && absurd.sizing.status).toBe('refused');
    expect(absurd.kind === 'sized' && absurd.otherUnit).toBe('cm');
    // With its unit written out, there is nothing to guess.
    const meant = outcome('16.5 in');
    expect(meant.kind === 'sized' && meant.otherUnit).toBeNull();
    const fits = outcome('6.5');
    expect(fits.kind === 'sized' && fits.otherUnit).toBeNull();
  });

  test('beyond the piece there is its nearest, to look at but not to order', () => {
    const short = pieceOf(design({ strands: [strand([section('run', [['ball-8', 1]], { most: 9 })])] }));
    const beyond = outcomeOf(short, written('9 in'));
    expect(sizedOf(beyond)).toMatchObject({
      status: 'outside',
      side: 'above',
      limits: { mostBinds: [{ strand: 0, section: 'run' }] },
    });
    expect(shownOf(beyond)?.counts).toEqual([[9]]);
    expect(canOrder(beyond)).toBe(false);
  });
});

test('what is added and left out is summed over sections, with the centre kept', () => {
  const shown = shownOf(outcome('190 mm'));
  if (shown === null) throw new Error('expected a piece');
  const change = netChange(focalBracelet, shown);
  expect(change.added.length).toBeGreaterThan(0);
  expect([...change.added, ...change.leftOut].every(({ count }) => count > 0)).toBe(true);
  // Both sides of a mirrored strand: always pairs.
  expect([...change.added, ...change.leftOut].every(({ count }) => count % 2 === 0)).toBe(true);
  expect(change).toMatchObject({ centreKept: true, bothSides: true });
});

describe('unit', () => {
  test('a measure that can be made is converted', () => {
    expect(rewrite(bracelet, written('6½'), 'cm', 'en')).toBe('16.5');
    expect(rewrite(bracelet, written('16,5', { unit: 'cm' }), 'in', 'de')).toBe('6½');
  });

  test('one that can’t was most likely written in the other unit all along', () => {
    expect(rewrite(bracelet, written('16.5'), 'cm', 'en')).toBe('16.5');
  });

  test('what can’t be read stays', () => {
    expect(rewrite(bracelet, written('six'), 'cm', 'en')).toBe('six');
  });
});

describe('slider', () => {
  test('stays within what the piece can be, in whole steps', () => {
    const limits = limitsOf(bracelet, 'wrist', 'easy');
    if (limits === null) throw new Error('expected limits');
    for (const unit of ['in', 'cm'] as const) {
      const { least, most, value } = sliderRange(unit, limits.leastAskedMm, limits.mostAskedMm, 165.1);
      expect(sliderMm(unit, least)).toBeGreaterThanOrEqual(limits.leastAskedMm - 1e-6);
      expect(sliderMm(unit, most)).toBeLessThanOrEqual(limits.mostAskedMm + 1e-6);
      expect(Math.abs(sliderMm(unit, value) - 165.1)).toBeLessThanOrEqual(unit === 'in' ? 1.6 : 0.5);
    }
  });

  test('stands in the middle before there is a measure, and at an end beyond it', () => {
    expect(sliderRange('cm', 100, 200, null).value).toBe(150);
    expect(sliderRange('cm', 100, 200, 999).value).toBe(200);
  });

  test('a piece that can’t be sized has no limits', () => {
    const soldOut = withComponent(
      design({ strands: [strand([section('run', [['ball-8', 1]], { fewest: 4 })])] }),
      'ball-8',
      { stock: 1 },
    );
    expect(limitsOf(pieceOf(soldOut), 'wrist', 'easy')).toBeNull();
  });
});

describe('memory', () => {
  const recalled = (store: Store, of = bracelet): SizerState =>
    recall(store, of, startOf(of.design.kind, 'in'));
  const necklace = pieceOf(pendantNecklace, { id: 'necklace' });

  test('brings back unit, sit, hand and measure', () => {
    const store = memoryStore();
    const state = written('6½', { sit: 'snug', hand: 'left' });
    remember(store, bracelet, state);
    expect(recalled(store)).toEqual(state);
  });

  test('a neck is remembered beside a wrist, each in its own unit', () => {
    const store = memoryStore();
    remember(store, bracelet, written('6½'));
    remember(store, necklace, { ...startOf('necklace', 'cm'), of: 'neck', text: '35' });
    expect(recalled(store, necklace)).toMatchObject({ of: 'neck', text: '35', unit: 'cm' });
    // The unit is centimetres now; the wrist was written in inches.
    expect(recalled(store)).toMatchObject({ of: 'wrist', text: '6½ in', unit: 'cm' });
  });

  test.each([
    '',
    'null',
    '7',
    '{"unit":"ell","wrist":5}',
    '{"wrist":{"text":9,"unit":"in"}}',
    '{',
    '[]',
    '{"chosen":7}',
    '{"chosen":[1,null,["test-piece",3]]}',
  ])('rubbish in the store (%s) is passed over', (text) => {
    const store = memoryStore();
    store.write('claspwise.size', text);
    expect(recalled(store)).toEqual(start);
  });

  test('a device that keeps nothing does no harm', () => {
    const store = memoryStore(0);
    remember(store, bracelet, written('6½', { pick: 'above' }));
    expect(recalled(store)).toEqual(start);
  });

  describe('of choices that belong to one piece', () => {
    const offer = { differenceMinor: 0, cautions: [], name: 'Toggle' };
    const offering = pieceOf(focalBracelet, {
      offers: [
        { ...offer, part: 'clasp', id: 'toggle' },
        { ...offer, part: 'pendant', id: 'drop' },
      ],
    });
    const swapped = written('6½', { parts: { clasp: 'toggle', pendant: '' }, pick: 'above' });

    test('brings back parts and pick for their own piece only', () => {
      const store = memoryStore();
      remember(store, offering, swapped);
      expect(recalled(store, offering)).toEqual(swapped);
      expect(recalled(store, { ...offering, id: 'another' })).toMatchObject({
        parts: AS_DESIGNED,
        pick: 'best',
      });
    });

    test('a part that isn’t offered any more is forgotten, the others stay', () => {
      const store = memoryStore();
      remember(store, offering, { ...swapped, parts: { clasp: 'toggle', pendant: 'drop' } });
      const fewer = pieceOf(focalBracelet, { offers: (offering.offers ?? []).slice(1) });
      expect(recalled(store, fewer).parts).toEqual({ clasp: '', pendant: 'drop' });
    });

    test('a pick holds for the size it was made for, in either unit', () => {
      const store = memoryStore();
      remember(store, offering, swapped);
      keepUnit(store, 'cm');
      expect(recalled(store, offering)).toMatchObject({ text: '6½ in', unit: 'cm', pick: 'above' });
      // On another piece she tries another size: the pick of this one meant the old one.
      remember(store, { ...offering, id: 'another' }, written('7'));
      expect(recalled(store, offering)).toMatchObject({ text: '7', parts: swapped.parts, pick: 'best' });
    });
  });
});

test('a pendant necklace at 17½ in is within the tolerance, and its hand matters', () => {
  const sized = sizedOf(
    outcomeOf(pieceOf(pendantNecklace), { ...startOf('necklace', 'in'), text: '17 1/2' }),
  );
  expect(sized?.status).toBe('fits');
  expect(sized?.status === 'fits' && sized.hand).toMatchObject({
    boardSide: 'left',
    reason: 'has-front-and-side',
  });
  expect(
    Math.abs((sized?.status === 'fits' ? sized.chosen.finishedLengthMm : 0) - 444.5),
  ).toBeLessThanOrEqual(6);
});
