import { describe, expect, it } from 'vitest';
import { formatFor } from '#words/format.ts';
import { LANGS } from '#words/lang.ts';
import { strandLengthsText, strandsDiffer } from '#words/strandLengths.ts';
import { orderWords } from '#words/words.ts';
import { nested, sample } from '../order/orders.ts';

const cm = formatFor('en', 'cm', 'GBP');

describe('the lengths of an order’s strands', () => {
  it('stand from the shortest on, those that read alike once', () => {
    expect(strandLengthsText(cm, [500, 450, 450.2])).toBe([450, 500].map(cm.length).join(' · '));
  });

  it('differ where they read differently, and are taken to where an older order doesn’t tell', () => {
    expect(strandsDiffer(cm, { counts: [[1]], strandsMm: [] })).toBe(false);
    expect(strandsDiffer(cm, { counts: [[1], [1]], strandsMm: [] })).toBe(true);
    expect(strandsDiffer(cm, { counts: [[1], [1]], strandsMm: [450, 450.2] })).toBe(false);
    expect(strandsDiffer(cm, { counts: [[1], [1]], strandsMm: [450, 500] })).toBe(true);
  });

  it.each(LANGS)('are all told in an order, with the strand that its measure is of, in %s', (lang) => {
    const format = formatFor(lang, 'cm', 'GBP');
    const words = orderWords(lang);
    const values = words.rows(format, nested, 'Forty Days').map(({ value }) => value);
    expect(values).toContain(strandLengthsText(format, nested.shown.strandsMm));
    expect(values).toContain(words.size(format, nested));
    const alone = { ...nested, shown: { ...nested.shown, counts: [[9]], strandsMm: [] } };
    expect(words.size(format, nested)).not.toBe(words.size(format, alone));
  });

  it.each(LANGS)('are one where there is one strand, in %s', (lang) => {
    const format = formatFor(lang, 'cm', 'GBP');
    const [length] = orderWords(lang).measured(format, sample.shown);
    expect(length?.value).toBe(format.length(sample.shown.lengthMm));
  });
});
