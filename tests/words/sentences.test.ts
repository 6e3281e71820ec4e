/** Sentences of sizing and of an order's road, read as a buyer would. */
import { describe, expect, test } from 'vitest';
import { formatFor } from '#words/format.ts';
import { LANGS } from '#words/lang.ts';
import { bodyWords, orderWords, sizingWords, terminalWords } from '#words/words.ts';
import { sentenceOf } from '#words/sentence.ts';
import { sample } from '#tests/order/orders.ts';

const plain = (text: string): string => text.replaceAll('\u00a0', ' ');
const inches = formatFor('en', 'in', 'GBP');
const en = sizingWords('en');

const LIMITS = {
  leastMm: 150,
  mostMm: 220,
  leastAskedMm: 139.7,
  mostAskedMm: 209.55,
  leastBinds: [],
  mostBinds: [],
  mostStock: [],
};

test('a refusal names what was asked and what is possible', () => {
  const problem = { code: 'measure-absurd', mm: 419.1, leastMm: 80, mostMm: 300 } as const;
  expect(plain(sentenceOf(en.problems, problem, inches))).toBe(
    '16½ in can’t be right: this measure lies between 3⅛ in and 11¾ in. Check the number and the unit.',
  );
});

test('a size outside the piece says the end it met, as the buyer measures', () => {
  expect(plain(en.outside(inches, 'below', 'wrist', LIMITS))).toBe(
    'This piece can’t be made that small. The smallest is for a wrist of 5½ in.',
  );
  expect(plain(en.outside(inches, 'above', 'length', LIMITS))).toBe(
    'This piece can’t be made that large. The largest is 8⅝ in.',
  );
});

describe.each(LANGS)('in %s', (lang) => {
  const format = formatFor(lang, 'cm', 'GBP');

  test('every way a measure can’t be read has its sentence', () => {
    const { unread } = sizingWords(lang);
    const sentences = [
      unread.empty({ code: 'empty' }, format),
      unread['text-too-long']({ code: 'text-too-long', most: 40 }, format),
      unread['not-a-number']({ code: 'not-a-number', text: 'six' }, format),
      unread['unknown-unit']({ code: 'unknown-unit', unit: 'ells' }, format),
      unread['two-measures']({ code: 'two-measures', text: '6 to 7' }, format),
      unread['not-positive']({ code: 'not-positive', text: '-1' }, format),
      unread['too-large']({ code: 'too-large', mostMm: 10_000 }, format),
    ];
    expect(sentences.every((sentence) => sentence.length > 20)).toBe(true);
    expect(sentences[2]).toContain('six');
    expect(sentences[3]).toContain('ells');
    expect(plain(sentences[6] ?? '')).toMatch(/1[.,]000 cm/);
    expect(new Set(sentences).size).toBe(sentences.length);
  });

  test('an order’s rows hold all that was chosen', () => {
    const rows = orderWords(lang).rows(format, { ...sample, quantity: 2 }, 'Weir Light');
    const text = plain(rows.map(({ label, value }) => `${label}: ${value}`).join('\n'));
    expect(text).toContain('Weir Light');
    // No codes in anything a buyer reads.
    expect(text).not.toMatch(/weir-light|0123456789ab/);
    expect(text).toContain('6 1/2 in');
    expect(text).toMatch(/20[.,]1 cm/);
    expect(text).toMatch(/64[.,]50/);
    // Two of them.
    expect(text).toMatch(/129[.,]00/);
    expect(text).toContain('iris.moeller@example.org');
    expect(text).toContain('birthday');
    expect(text).toMatch(/left hand|linke Hand/);
  });

  test('above the pit of the neck is not below it', () => {
    const words = bodyWords(lang);
    expect(words.handleText(format, 400, -20)).toMatch(/above|über/);
    expect(words.handleText(format, 400, 20)).toMatch(/below|unter/);
  });
});

describe('a height told from the pit of the neck', () => {
  const centimetres = formatFor('de', 'cm', 'EUR');
  const { lies } = terminalWords('en');
  const { lies: liegt } = terminalWords('de');

  test('a drop that reads as none is level with it, on either side', () => {
    for (const drop of [-1.5, -0.01, 0, 1.5]) {
      expect(plain(lies(inches, drop, -25.4, 25.4))).toBe(
        'Its lowest bead lies about level with the pit of the neck; for nine people in ten between 1 in above and 1 in below it.',
      );
    }
    expect(plain(liegt(centimetres, 0.4, -0.4, 30))).toBe(
      'Die tiefste Perle liegt etwa auf Höhe der Halsgrube; bei neun von zehn Menschen zwischen ihrer Höhe und 3 cm unter ihr.',
    );
  });

  test('a pendant in the pit of the neck or above it is told so', () => {
    const { pendantLies } = terminalWords('en');
    expect(plain(pendantLies(inches, -25.4))).toBe(
      'The middle of the pendant lies about 1 in above the pit of the neck.',
    );
    expect(plain(pendantLies(inches, 0.2))).toContain('about level with the pit');
    expect(plain(terminalWords('de').pendantLies(centimetres, 30))).toBe(
      'Die Mitte des Anhängers liegt etwa 3 cm unter der Halsgrube.',
    );
  });

  test.each(LANGS)('%s: no band is told with a minus', (lang) => {
    const f = formatFor(lang, 'cm', 'EUR');
    expect(bodyWords(lang).hangs(f, 5, -30, 40)).not.toMatch(/[-−]\d/);
  });
});
