/** What the shop's cautions say, against the rules they name. */
import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { catalogueOf } from '#tests/support/catalogue.ts';

const content = resolve(import.meta.dirname, '../../content');
const guide = (lang: string) => readFileSync(resolve(content, `guides/${lang}/cautions.md`), 'utf8');

describe.each([
  ['en', 'in', '.'],
  ['de', 'Zoll', ','],
])('the cautions in %s', (lang, inches, point) => {
  const text = guide(lang);
  const has = (...parts: string[]) =>
    parts.forEach((part) => expect(text).toContain(part.replaceAll('.', point)));

  // 16 CFR 1501.4: a cylinder 1.25 in wide, at most 2.25 in deep.
  it('small parts', () => {
    has(`1.25 ${inches}`, `2.25 ${inches}`);
    expect(text).toContain('16 CFR 1501.4');
  });

  // Soudek and McLaughlin, Paediatrics & Child Health 23(2), 2018: 15 lbf opens a breakaway, 1.6 lbf closes an airway.
  it('a breakaway is not safe, by a factor of about nine', () => {
    expect(Math.round(15 / 1.6)).toBe(9);
    expect(text).toMatch(lang === 'en' ? /15 lbf.*about nine times/s : /15 lbf.*neunmal/s);
    expect(text).toContain('2018');
  });

  // REACH Annex XVII entry 27 (0.5 µg/cm²/week), entry 63 (0.05 %); 15 U.S.C. 1278a (100 ppm); 16 CFR 1262.3.
  it('nickel, lead and magnets', () => {
    has('0.5 µg/cm²', '0.05 %');
    for (const rule of ['XVII', '27', '63', '100 ppm', '15 U.S.C. 1278a', '16 CFR 1262.3'])
      expect(text).toContain(rule);
  });

  it('sends the reader to the rule where she lives', () => {
    expect(text).toMatch(
      lang === 'en' ? /check what holds where you live/ : /bei Ihnen|wo Sie (leben|wohnen)|an Ihrem Ort/,
    );
  });
});

// 16 CFR 1501.4 again: the guide says of every bead that it fits the small parts cylinder.
it('every bead of the shop is a small part, as the guide says', () => {
  const beads = Object.values(catalogueOf().components).filter(({ kind }) => kind === 'bead');
  expect(beads.length).toBeGreaterThan(10);
  for (const { name, alongMm, acrossMm } of beads) {
    expect(Math.min(alongMm, acrossMm), name).toBeLessThanOrEqual(31.75);
    expect(Math.max(alongMm, acrossMm), name).toBeLessThanOrEqual(57.15);
  }
});
