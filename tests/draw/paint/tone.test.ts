import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lightnessOf, mix, tone } from '#draw/paint/ink/tone.ts';

const colour = fc
  .integer({ min: 0, max: 0xffffff })
  .map((value) => `#${value.toString(16).padStart(6, '0')}`);

// Lightness of the sRGB primaries in OKLab, as in the CSS Color Module Level 4 samples (from memory).
test.each([
  ['#ffffff', 1],
  ['#000000', 0],
  ['#ff0000', 0.62796],
  ['#00ff00', 0.86644],
  ['#0000ff', 0.45201],
])('%s has a lightness of %d', (given, lightness) => {
  expect(lightnessOf(given)).toBeCloseTo(lightness, 4);
});

describe('any colour', () => {
  test('unchanged or mixed with nothing is itself', () => {
    fc.assert(
      fc.property(colour, colour, (one, other) => {
        expect(lightnessOf(tone(one, 0))).toBeCloseTo(lightnessOf(one), 2);
        expect(mix(one, other, 0)).toBe(tone(one, 0));
        expect(mix(one, other, 1)).toBe(tone(other, 0));
      }),
    );
  });

  test('made lighter is not darker', () => {
    fc.assert(
      fc.property(colour, fc.double({ min: 0, max: 0.4, noNaN: true }), (one, add) => {
        expect(lightnessOf(tone(one, add))).toBeGreaterThan(lightnessOf(one) - 0.005);
      }),
    );
  });

  test('comes out as a colour that SVG knows', () => {
    fc.assert(
      fc.property(colour, fc.double({ min: -1, max: 1, noNaN: true }), (one, add) => {
        expect(tone(one, add)).toMatch(/^#([0-9a-f]{3}|[0-9a-f]{6})$/);
      }),
    );
  });
});

test('what is no colour is drawn grey', () => {
  expect(tone('puce', 0)).toBe('#808080');
});
