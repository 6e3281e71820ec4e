/** Life size: a screen is measured with a bank card, and drawings follow. */
import { describe, expect, test } from 'vitest';
import {
  CARD_MM,
  lifeWidthPx,
  NOMINAL_PX_PER_MM,
  recallPixels,
  rememberPixels,
} from '#sizer/ruler/model/pixels.ts';
import { memoryStore } from './support.ts';

test('the card is an ID-1 card (ISO/IEC 7810)', () => {
  expect(CARD_MM).toEqual({ width: 85.6, height: 53.98 });
});

test('before it is measured, a screen is taken for 96 pixels an inch (CSS Values and Units)', () => {
  expect(NOMINAL_PX_PER_MM * 25.4).toBeCloseTo(96, 12);
});

describe('memory', () => {
  test('keeps what was measured', () => {
    const store = memoryStore();
    expect(recallPixels(store)).toBeNull();
    rememberPixels(store, 5.25);
    expect(recallPixels(store)).toBe(5.25);
  });

  test.each(['', 'wide', '0', '-3', '1e9', 'NaN'])('no screen has %s pixels a millimetre', (text) => {
    const store = memoryStore();
    store.write('claspwise.screen', text);
    expect(recallPixels(store)).toBeNull();
  });
});

test('a drawing is as wide as its view box says in millimetres', () => {
  expect(lifeWidthPx('-9.4 -6.5 455.8 46', 4)).toBeCloseTo(1823.2, 9);
  expect([
    lifeWidthPx(null, 4),
    lifeWidthPx('', 4),
    lifeWidthPx('0 0 0 5', 4),
    lifeWidthPx('a b c d', 4),
  ]).toEqual([null, null, null, null]);
});
