import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { layCallouts } from '#draw/drawings/callouts.ts';
import { placeAt, pointerAt } from '#draw/drawings/pointer.ts';
import { boardMarks, rulerMarks } from '#draw/drawings/ruler.ts';
import { airMm } from '#draw/drawings/wrist.ts';

describe('rulers', () => {
  // NIST SP 811, appendix B: 1 in = 25.4 mm exactly.
  test('seven inches end at 177.8 mm', () => {
    const marks = rulerMarks(177.8, 'in');
    expect(marks.at(-1)).toEqual({ atMm: expect.closeTo(177.8, 9), size: 'long', label: '7' });
    expect(marks).toHaveLength(7 * 4 + 1);
  });

  test('centimetres are numbered ten millimetres apart', () => {
    const numbered = rulerMarks(95, 'cm').filter(({ label }) => label !== '');
    expect(numbered.map(({ label, atMm }) => [label, atMm])).toEqual(
      Array.from({ length: 10 }, (_, cm) => [String(cm), cm * 10]),
    );
  });

  test('a long one is numbered less often', () => {
    const labels = rulerMarks(460, 'cm').flatMap(({ label }) => (label === '' ? [] : [label]));
    expect(labels).toEqual(['0', '5', '10', '15', '20', '25', '30', '35', '40', '45']);
  });
});

test('a bead board reads the length between its two sides: one inch half an inch from zero', () => {
  const marks = boardMarks(88.9, 'in').filter(({ label }) => label !== '');
  expect(marks.map(({ label, atMm }) => [label, atMm])).toEqual(
    Array.from({ length: 8 }, (_, inch) => [String(inch), expect.closeTo(inch * 12.7, 9)]),
  );
});

test('a pointer and a place on the body turn into each other', () => {
  const size = fc.double({ min: 20, max: 2000, noNaN: true });
  const place = fc.double({ min: -500, max: 500, noNaN: true });
  fc.assert(
    fc.property(size, size, size, size, place, place, (width, height, wide, tall, x, y) => {
      const box = { x: -width / 2, y: -40, width, height };
      const frame = { left: 13, top: -120, width: wide, height: tall };
      const { clientX, clientY } = pointerAt(box, frame, { xMm: x, yMm: y });
      const back = placeAt(box, frame, clientX, clientY);
      expect(back.xMm).toBeCloseTo(x, 6);
      expect(back.yMm).toBeCloseTo(y, 6);
    }),
  );
});

test('the corners of a drawing that just fits are those of its frame', () => {
  const box = { x: -100, y: -50, width: 200, height: 300 };
  const frame = { left: 10, top: 20, width: 400, height: 600 };
  expect(placeAt(box, frame, 10, 20)).toEqual({ xMm: -100, yMm: -50 });
  expect(placeAt(box, frame, 410, 620)).toEqual({ xMm: 100, yMm: 250 });
});

// Two circles: girths differ by π times what their diameters differ by.
test('ten millimetres of ease are 3.18 mm of air', () => {
  expect(airMm(175, 165)).toBeCloseTo(3.183, 3);
  expect(airMm(150, 165)).toBeLessThan(0);
});

test('no words of a close-up run into others on their line, and no line through words', () => {
  const words = fc.stringMatching(/^[a-z]{1,14}$/);
  const one = fc.record({
    words,
    atMm: fc.double({ min: 0, max: 60, noNaN: true }),
    side: fc.constantFrom('above' as const, 'below' as const),
  });
  fc.assert(
    fc.property(fc.array(one, { maxLength: 6 }), (callouts) => {
      const { svg, rightMm } = layCallouts(callouts, 5, 60, 2);
      const texts = [...svg.matchAll(/<text(?: x="([^"]+)")?(?: y="([^"]+)")?>([a-z]+)</g)].map(
        ([, x = '0', y = '0', text = '']) => ({ x: Number(x), y, half: text.length / 2 }),
      );
      expect(texts).toHaveLength(callouts.length);
      // A line from the picture to the height of its words: M x y V y.
      const lines = [...svg.matchAll(/M(-?[\d.]+)[ ,]?(-?[\d.]+)V(-?[\d.]+)/g)].map(([, x, , end]) => ({
        x: Number(x),
        end: Number(end),
      }));
      expect(lines).toHaveLength(callouts.length);
      for (const { x, y, half } of texts) {
        expect(x - half).toBeGreaterThan(-0.02);
        expect(x + half).toBeLessThan(rightMm + 0.02);
        for (const line of lines) {
          const beside = Math.abs(line.x - x) > half - 0.02;
          const beyond =
            Math.sign(line.end) === Math.sign(Number(y)) && Math.abs(line.end) > Math.abs(Number(y));
          expect(beside || !beyond).toBe(true);
        }
      }
      for (const [at, first] of texts.entries()) {
        for (const second of texts.slice(at + 1)) {
          if (first.y === second.y) {
            expect(Math.abs(first.x - second.x)).toBeGreaterThan(first.half + second.half - 0.02);
          }
        }
      }
    }),
  );
});
