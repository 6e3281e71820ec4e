import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { breakLines } from '#draw/svg/lines.ts';
import { element, escapeXml, num, pair } from '#draw/svg/text.ts';

describe('short numbers', () => {
  test.each([
    [0.5, '.5'],
    [-0.5, '-.5'],
    [-0.001, '0'],
    [12.345, '12.35'],
    [-3, '-3'],
    [1e-9, '0'],
    [10.1, '10.1'],
  ])('%d is written %s', (value, text) => {
    expect(num(value)).toBe(text);
  });

  test('mean what they stand for, to half a hundredth', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), (value) => {
        expect(Math.abs(Number(num(value)) - value)).toBeLessThanOrEqual(0.0050001);
      }),
    );
  });

  test.each([NaN, Infinity, -Infinity])('%d is refused', (value) => {
    expect(() => num(value)).toThrow(RangeError);
  });

  test('two in a row are told apart by a space or a sign', () => {
    expect(pair(1, 2)).toBe('1 2');
    expect(pair(1, -2)).toBe('1-2');
    expect(pair(1, 0.25)).toBe('1 .25');
  });
});

test('escaped words hold no mark-up and no sign that XML forbids', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary', maxLength: 60 }), (words) => {
      const written = escapeXml(words);
      expect(written).not.toMatch(/[<>"']/);
      expect(written.replace(/&(amp|lt|gt|quot|#39);/g, '')).not.toContain('&');
      expect(written).not.toMatch(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/);
      expect(() => encodeURIComponent(written)).not.toThrow();
    }),
  );
});

test('an attribute that has no value is left out', () => {
  expect(element('g', { a: 1, b: undefined, c: '"' })).toBe('<g a="1" c="&quot;"/>');
});

test('lines hold all the words in their order, and no line is too long unless its one word is', () => {
  fc.assert(
    fc.property(
      fc.array(fc.stringMatching(/^[a-z]{1,12}$/), { minLength: 1, maxLength: 20 }),
      fc.integer({ min: 10, max: 60 }),
      (words, widthMm) => {
        const lines = breakLines(words.join(' '), widthMm, 4);
        expect(lines.join(' ')).toBe(words.join(' '));
        for (const line of lines) expect(line.includes(' ') && line.length > widthMm / 2).toBe(false);
      },
    ),
  );
});
