import { globSync, readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import { describe, expect, test } from 'vitest';

/**
 * A page with a key is taken over while its properties and the frame stay the
 * same. A view that read more of the catalogue would show yesterday's.
 */
const IN_THE_KEY = new Set(['readShop']);

const resolve = (from: string, spec: string): string | null => {
  if (spec.startsWith('#')) return `src/${spec.slice(1)}`;
  return spec.startsWith('.') ? normalize(join(dirname(from), spec)) : null;
};

const importsOf = (file: string): { what: string; from: string }[] =>
  [...readFileSync(file, 'utf8').matchAll(/import\s+([^;]*?)\s+from\s+'([^']+)'/g)].flatMap(
    ([, what, spec]) => {
      const from = resolve(file, spec ?? '');
      return from === null || what === undefined ? [] : [{ what, from }];
    },
  );

/** Names a file and all it stands on take from the catalogue's readers. */
function readersBelow(file: string, seen = new Set<string>()): readonly string[] {
  if (seen.has(file) || !/\.(astro|tsx?)$/.test(file)) return [];
  seen.add(file);
  return importsOf(file).flatMap(({ what, from }) => {
    if (from !== 'src/catalogue/collections.ts') return readersBelow(from, seen);
    if (what.startsWith('type ')) return [];
    return [...what.matchAll(/\b(?<!type )read\w+/g)].map(([name]) => name);
  });
}

const keyedPages = globSync('src/pages/**/*.astro').filter((file) =>
  readFileSync(file, 'utf8').includes('build/keyed.ts'),
);

describe('pages with a key read no more than the key holds', () => {
  test('there are such pages', () => {
    expect(keyedPages.length).toBeGreaterThan(3);
  });

  test.each(keyedPages)('%s', (page) => {
    const views = importsOf(page).filter(({ from }) => from.startsWith('src/ui/views/'));
    expect(views.length).toBe(1);
    const seen = new Set<string>(['src/ui/models/frame.ts']); // its reads are the frame, which is in the key
    const read = views.flatMap(({ from }) => readersBelow(from, seen));
    expect(seen.size).toBeGreaterThan(10);
    expect([...new Set(read)].filter((name) => !IN_THE_KEY.has(name))).toEqual([]);
  });

  test('a view that reads all pieces is seen', () => {
    expect(readersBelow('src/ui/views/FrontPage.astro')).toContain('readPieces');
  });
});
