/** The search against what strangers type: which pieces are found, which aren't, and that what is left out is said. */
import { describe, expect, test } from 'vitest';
import { cautionsOf } from '#catalogue/facts/cautions.ts';
import { facetsOf } from '#catalogue/facts/facets.ts';
import type { Piece } from '#catalogue/model/catalogue.ts';
import { range } from '#core/sizing/range.ts';
import { priceOf } from '#ui/search/figures.ts';
import { fitsOf } from '#ui/search/fitsOf.ts';
import { matcher } from '#ui/search/match.ts';
import { openVocabulary } from '#ui/search/reading/open.ts';
import { readQuery } from '#ui/search/reading/read.ts';
import { buildVocabulary } from '#ui/search/vocabulary/build.ts';
import type { Lang } from '#words/lang.ts';
import { catalogueOf } from '#tests/support/catalogue.ts';
import type { Answer, Asked, Facts, Test } from './answers.ts';
import { ENGLISH } from './english.ts';
import { GERMAN } from './german.ts';

const catalogue = catalogueOf();
const { pieces, shop } = catalogue;

/** Marks stand this far apart at most, mm: within it a piece may be found or not. */
const STEP_MM = 2.5;

/** @param asideMm how much further, or less far, than it does a piece is taken to reach */
function factsOf(piece: Piece, asideMm: number): Facts {
  const { design } = piece;
  const facets = facetsOf(piece);
  const minor = priceOf(piece);
  const clasp = design.components[design.ends.clasp];
  const fits = fitsOf(design.kind, range(design, shop.rules));
  return {
    id: piece.id,
    kind: design.kind,
    status: piece.status,
    year: facets.year,
    price: minor === null ? null : minor / 100,
    materials: facets.materials,
    colours: facets.colours,
    closing: facets.closing,
    claspOf: clasp?.material ?? '',
    strands: facets.strands,
    pendant: design.hanging !== null,
    extender: design.ends.extenderMm > 0,
    nickel: cautionsOf(design).includes('nickel'),
    isMade: (of, from, to) =>
      fits
        .filter((one) => one.of === of)
        .some(({ stretches }) =>
          stretches.some(({ leastMm, mostMm }) => leastMm - asideMm <= to && mostMm + asideMm >= from),
        ),
  };
}
const [surely, perhaps] = [-STEP_MM, STEP_MM].map((aside) => pieces.map((piece) => factsOf(piece, aside)));
const factsById = new Map(perhaps?.map((facts) => [facts.id, facts]));

/** More than this share of the shop is nearly everything. */
const NEARLY_ALL = 0.6;

type Got = {
  readonly found: readonly string[];
  readonly near: readonly string[];
  /** Marks and notes. */
  readonly shown: string;
};

const idsOf = (facts: readonly Facts[] | undefined, wanted: Test): string[] =>
  (facts ?? []).filter(wanted).map(({ id }) => id);
const every = (ids: readonly string[], wanted: Test): boolean =>
  ids.every((id) => {
    const facts = factsById.get(id);
    return facts !== undefined && wanted(facts);
  });

function isRight(wanted: Answer, { found, near, shown }: Got): boolean {
  if (wanted.shown?.test(shown) === false) return false;
  if (wanted.nothing !== undefined) {
    const isNear = wanted.nothing === true || every(near, wanted.nothing);
    return found.length === 0 && isNear && (shown !== '' || near.length > 0);
  }
  const most = wanted.most ?? (wanted.many === true ? pieces.length - 1 : pieces.length * NEARLY_ALL);
  if (found.length === 0 || found.length > most) return false;
  if (wanted.has?.some((id) => !found.includes(id)) === true) return false;
  if (wanted.within !== undefined) return every(found, wanted.within);
  if (wanted.exactly === undefined) return false;
  const must = idsOf(surely, wanted.exactly);
  return must.every((id) => found.includes(id)) && every(found, wanted.exactly);
}

function searchIn(lang: Lang): (words: string) => Got {
  const opened = openVocabulary(buildVocabulary(catalogue, lang));
  const find = matcher(catalogue, lang);
  return (words) => {
    const reading = readQuery(words, opened, { unit: lang === 'de' ? 'cm' : 'in' });
    const { parts, said, hopeless } = reading;
    const tooLittle = parts.length === 0 && !hopeless;
    const { pieces: found, near } = tooLittle ? { pieces: [], near: [] } : find(reading);
    return {
      found: found.map(({ id }) => id),
      near: near.map(({ id }) => id),
      shown: [
        ...parts.flatMap(({ label }) => label ?? []),
        ...said.map(({ text }) => text),
        ...(tooLittle ? [opened.vocabulary.said.tooLittle] : []),
      ].join(' | '),
    };
  };
}

test('there are hundreds of them, a third German, and none twice', () => {
  expect(ENGLISH.length + GERMAN.length).toBeGreaterThan(280);
  expect(GERMAN.length).toBeGreaterThan(100);
  for (const list of [ENGLISH, GERMAN]) expect(new Set(list.map(([words]) => words)).size).toBe(list.length);
});

describe.each<[Lang, readonly Asked[]]>([
  ['en', ENGLISH],
  ['de', GERMAN],
])('what strangers type, in %s', (lang, list) => {
  const search = searchIn(lang);
  test.each(list.map(([words, ...answers]) => [words, answers] as const))('%s', (words, answers) => {
    const got = search(words);
    expect(
      answers.some((wanted) => isRight(wanted, got)),
      JSON.stringify(got),
    ).toBe(true);
  });
});
