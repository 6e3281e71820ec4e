/** Pieces by their names, with one slip of the key anywhere in them. */
import { describe, expect, test } from 'vitest';
import { textsOf } from '#catalogue/model/catalogue.ts';
import { matcher } from '#ui/search/match.ts';
import { openVocabulary } from '#ui/search/reading/open.ts';
import { readQuery } from '#ui/search/reading/read.ts';
import { buildVocabulary } from '#ui/search/vocabulary/build.ts';
import { LANGS } from '#words/lang.ts';
import { catalogueOf } from '#tests/support/catalogue.ts';

const catalogue = catalogueOf();
/** Of a slip in a shorter name nobody can say what was meant. */
const LEAST_LETTERS = 6;
/** Some slips make another word of the shop: "Was Day". */
const SHARE_FOUND = 0.97;

const places = (name: string): number[] =>
  [...name].flatMap((letter, at) => (at > 0 && /\p{L}/u.test(letter) ? [at] : []));

/** By what was slipped, the name with that slip at every place but the first. */
const SLIPS = {
  'a letter left out': (name: string) => places(name).map((at) => name.slice(0, at) + name.slice(at + 1)),
  'a letter twice': (name: string) => places(name).map((at) => name.slice(0, at + 1) + name.slice(at)),
  'the key beside it': (name: string) =>
    places(name).map((at) => `${name.slice(0, at)}g${name.slice(at + 1)}`),
  'two letters that changed places': (name: string) =>
    places(name)
      .filter((at) => at > 1 && /\p{L}/u.test(name[at - 1] ?? ''))
      .map((at) => name.slice(0, at - 1) + (name[at] ?? '') + (name[at - 1] ?? '') + name.slice(at + 1)),
};

describe.each(LANGS)('in %s', (lang) => {
  const opened = openVocabulary(buildVocabulary(catalogue, lang));
  const find = matcher(catalogue, lang);
  test.each(Object.keys(SLIPS) as (keyof typeof SLIPS)[])('a name with %s is found', (slip) => {
    let asked = 0;
    const missed: string[] = [];
    for (const piece of catalogue.pieces) {
      const { name } = textsOf(piece, lang);
      if (name.length < LEAST_LETTERS) continue;
      for (const typed of SLIPS[slip](name)) {
        asked += 1;
        const reading = readQuery(typed, opened, { unit: 'cm' });
        if (!find(reading).pieces.some(({ id }) => id === piece.id)) missed.push(typed);
      }
    }
    expect(asked).toBeGreaterThan(catalogue.pieces.length);
    expect(missed.length, missed.join(', ')).toBeLessThanOrEqual(asked * (1 - SHARE_FOUND));
  });
});
