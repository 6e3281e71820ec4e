/** That the list of the bench's pages, which the browser tests go through, leaves out none. */
import { globSync } from 'node:fs';
import { expect, test } from 'vitest';
import { GROUPS } from '#bench/views/places.ts';
import { addressOf, FURTHER, PLACES } from '#tests/browser/bench/pages.ts';

/** Opened by tests of their own, for they stand only after something was done. */
const ELSEWHERE: Readonly<Record<string, string>> = {
  'enter.astro': 'only somebody from elsewhere gets it',
  'invoices/[invoice].astro': 'an invoice must have been issued',
  'keep/restore.astro': 'answers a form with a harmed backup',
  'orders/[number]/change.astro': 'answers a form that could not be done',
  'preview/[...lang]/index.astro': 'the shop’s own page, in preview.test.ts',
  'preview/[...lang]/guides/[id].astro': 'the same',
  'preview/[...lang]/pieces/[id].astro': 'the same',
  'steps/batch.astro': 'two orders of a piece must be chosen',
  'steps/keep.astro': 'answers a form that could not be done',
  'tablets/pair.astro': 'by the tablets’ door, in tablets.test.ts',
};

const root = new URL('../../src/pages/bench/', import.meta.url).pathname;

/** `pieces/[id]/words.astro` as a pattern of its addresses. */
const patternOf = (file: string): RegExp =>
  new RegExp(
    `^/bench/${file
      .replace(/(index)?\.astro$/, '/')
      .replace(/\/+$/, '')
      .replace(/\[[^\]]+\]/g, '[^/]+')}/?$`,
  );

test('every page at the bench is opened by the browser tests', () => {
  const paths = [...PLACES, ...FURTHER].map((page) => addressOf(page, 'A-1').replace(/\?.*/, ''));
  const files = globSync('**/*.astro', { cwd: root });
  const missing = files.filter(
    (file) => !(file in ELSEWHERE) && !paths.some((at) => patternOf(file).test(at)),
  );
  expect(missing).toEqual([]);
  expect(Object.keys(ELSEWHERE).filter((file) => !files.includes(file))).toEqual([]);
  expect(files.length).toBeGreaterThan(Object.keys(ELSEWHERE).length);
});

test('no place is listed twice, and none leads nowhere', () => {
  const places = GROUPS.flatMap(({ places: all }) => all.map(([name, path]) => ({ name, path })));
  expect(new Set(places.map(({ name }) => name)).size).toBe(places.length);
  const files = globSync('**/*.astro', { cwd: root });
  const nowhere = places.filter(({ path }) => !files.some((file) => patternOf(file).test(path)));
  expect(nowhere).toEqual([]);
});
