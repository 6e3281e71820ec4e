import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { facetsOf } from '#catalogue/facts/facets.ts';
import { matcher } from '#ui/search/match.ts';
import { openVocabulary } from '#ui/search/reading/open.ts';
import { readQuery } from '#ui/search/reading/read.ts';
import { without } from '#ui/search/reading/reading.ts';
import { buildVocabulary } from '#ui/search/vocabulary/build.ts';
import { LANGS, type Lang } from '#words/lang.ts';
import { catalogueOf } from '#tests/support/catalogue.ts';
import { QUERIES, type Expected } from './queries.ts';

const catalogue = catalogueOf();

function searchIn(lang: Lang) {
  const opened = openVocabulary(buildVocabulary(catalogue, lang));
  const find = matcher(catalogue, lang);
  const unit = lang === 'de' ? 'cm' : 'in';
  const read = (words: string) => readQuery(words, opened, { unit });
  return {
    read,
    search: (words: string) => {
      const reading = read(words);
      return { reading, ...find(reading) };
    },
  };
}
const searches = { en: searchIn('en'), de: searchIn('de') };
const ids = (pieces: readonly { readonly id: string }[]): string[] => pieces.map(({ id }) => id);

function judge({ lang, words, ...wanted }: Expected): void {
  const { reading, pieces, near } = searches[lang].search(words);
  const said = (code: string): string[] =>
    reading.said.filter((one) => one.code === code).map(({ text }) => text);
  const labels = reading.parts.flatMap(({ label }) => label ?? []).join(' | ');
  for (const mark of wanted.marks ?? []) expect(labels.replaceAll('\u00a0', ' ')).toContain(mark);
  if (wanted.corrected === undefined) expect(said('corrected')).toEqual([]);
  else expect(said('corrected').join()).toContain(wanted.corrected);
  expect(said('rough').length).toBe(wanted.rough === true ? 1 : 0);
  if (wanted.nothing === 'too little') {
    expect([reading.parts, reading.hopeless]).toEqual([[], false]);
    return;
  }
  if (wanted.nothing !== undefined) {
    expect(ids(pieces)).toEqual([]);
    if (wanted.nothing === 'no piece') expect(reading.hopeless).toBe(false);
    else expect(said(wanted.nothing)).not.toEqual([]);
    expect(near.length).toBeLessThanOrEqual(6);
  } else {
    expect(pieces.length).toBeGreaterThan(0);
    expect(pieces.length).toBeLessThan(catalogue.pieces.length);
  }
  for (const piece of [...pieces, ...near]) {
    if (wanted.kinds !== undefined) expect(wanted.kinds).toContain(piece.design.kind);
  }
  for (const piece of pieces) {
    if (wanted.most !== undefined) expect(piece.listedMinor).toBeLessThanOrEqual(wanted.most * 100);
    if (wanted.least !== undefined) expect(piece.listedMinor).toBeGreaterThanOrEqual(wanted.least * 100);
    if (wanted.colour !== undefined) expect(facetsOf(piece).colours).toContain(wanted.colour);
  }
  expect(ids(pieces)).toEqual(expect.arrayContaining([...(wanted.finds ?? [])]));
  for (const id of wanted.misses ?? []) expect(ids(pieces)).not.toContain(id);
  if (wanted.count !== undefined) expect(pieces).toHaveLength(wanted.count);
}

test('there are a hundred queries, forty of them German', () => {
  expect(QUERIES.length).toBeGreaterThanOrEqual(100);
  expect(QUERIES.filter(({ lang }) => lang === 'de').length).toBeGreaterThanOrEqual(40);
  expect(new Set(QUERIES.map(({ lang, words }) => `${lang} ${words}`)).size).toBe(QUERIES.length);
});

describe.each(LANGS)('what buyers type, in %s', (lang) => {
  test.each(QUERIES.filter((one) => one.lang === lang).map((one) => [one.words, one] as const))(
    '%s',
    (_, one) => judge(one),
  );
});

describe('every name', () => {
  test.each(LANGS)('of a piece finds it, alone or joined (%s)', (lang) => {
    for (const piece of catalogue.pieces) {
      const name = lang === 'de' ? (piece.de?.name ?? piece.name) : piece.name;
      for (const words of [name, name.toUpperCase(), name.replaceAll(' ', '-')])
        expect(ids(searches[lang].search(words).pieces), words).toContain(piece.id);
    }
  });
});

describe('whatever is typed', () => {
  const typed = fc.oneof(
    fc.string({ maxLength: 500, unit: 'grapheme' }),
    fc
      .array(fc.constantFrom(...QUERIES.flatMap(({ words }) => words.split(' '))), { maxLength: 12 })
      .map((words) => words.join(' ')),
  );

  test('is read without an error, and a kind asked for is kept to', () => {
    let judged = 0;
    fc.assert(
      fc.property(typed, fc.constantFrom(...LANGS), (words, lang) => {
        const { reading, pieces, near } = searches[lang].search(words);
        const kinds = reading.parts.find(({ ask }) => ask.by === 'pairs' && ask.group === 'kind' && !ask.not);
        if (kinds?.ask.by !== 'pairs') return;
        judged += 1;
        const found = [...pieces, ...near].map((piece) => piece.design.kind);
        expect(new Set(found).size).toBeLessThanOrEqual(kinds.ask.any.length);
      }),
      { numRuns: 300 },
    );
    expect(judged).toBeGreaterThan(30);
  });

  test('a mark taken away is gone, and the rest stays', () => {
    let judged = 0;
    for (const { lang, words } of QUERIES) {
      const { read } = searches[lang];
      const { parts } = read(words);
      for (const part of parts.filter(({ label }) => label !== null)) {
        judged += 1;
        const left = read(without(words, part.at)).parts;
        expect(
          left.map(({ label }) => label),
          words,
        ).not.toContain(part.label);
      }
    }
    expect(judged).toBeGreaterThan(80);
  });
});
