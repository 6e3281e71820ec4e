import { describe, expect, it } from 'vitest';
import { CARD_MM, PAPER_MM } from '#draw/drawings/strip.ts';
import { CARD_MM as SCREEN_CARD_MM, NOMINAL_PX_PER_MM } from '#sizer/ruler/model/pixels.ts';

describe('cards, paper and screen', () => {
  // ISO/IEC 7810 ID-1: 85.60 × 53.98 mm, corner radius 2.88 to 3.48 mm.
  it('a bank card', () => {
    for (const card of [CARD_MM, SCREEN_CARD_MM]) expect([card.width, card.height]).toEqual([85.6, 53.98]);
    expect(CARD_MM.corner).toBeGreaterThanOrEqual(2.88);
    expect(CARD_MM.corner).toBeLessThanOrEqual(3.48);
  });

  // ISO 216 A4; US Letter 8.5 × 11 in, which is 215.9 × 279.4 mm.
  it('paper', () => {
    expect(PAPER_MM.a4).toEqual([210, 297]);
    expect(PAPER_MM.letter).toEqual([215.9, 279.4]);
  });

  // CSS Values and Units: 1in = 2.54cm = 96px.
  it('a card of the nominal screen is 323.5 × 204 CSS pixels', () => {
    expect(CARD_MM.width * NOMINAL_PX_PER_MM).toBeCloseTo(323.5275590551181, 9);
    expect(CARD_MM.height * NOMINAL_PX_PER_MM).toBeCloseTo(204.01889763779525, 9);
    expect(PAPER_MM.a4[0] * NOMINAL_PX_PER_MM).toBeCloseTo(793.7007874015749, 9);
    expect(PAPER_MM.a4[1] * NOMINAL_PX_PER_MM).toBeCloseTo(1122.5196850393702, 9);
  });
});
