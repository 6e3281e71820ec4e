/** No file may stand on itself by way of others, and no folder on one beside it that stands on it. */
import { existsSync, globSync, readFileSync } from 'node:fs';
import { join, normalize } from 'node:path';
import ts from 'typescript';
import { expect, test } from 'vitest';
import { stages } from '../../.config/layers.mjs';

type Import = { readonly from: string; readonly to: string };

/** All that a file names as an import, types and what is fetched later included; of Astro's, its scripts' as well. */
function namedIn(file: string, text: string): readonly string[] {
  const code = file.endsWith('.astro')
    ? [...text.matchAll(/^---$([\s\S]*?)^---$|<script[^>]*>([\s\S]*?)<\/script>/gm)].map(
        ([, front, script]) => front ?? script ?? '',
      )
    : [text];
  return code.flatMap((part) => ts.preProcessFile(part).importedFiles.map(({ fileName }) => fileName));
}

const fileOf = (from: string, named: string): string =>
  (named.startsWith('#') ? `src/${named.slice(1)}` : normalize(join(from, '..', named))).replace(/\?.*$/, '');

const importsOf = (from: string, text: string): readonly Import[] =>
  namedIn(from, text)
    .filter((named) => /^[#.]/.test(named))
    .map((named) => ({ from, to: fileOf(from, named) }));

const importsOfSrc = globSync('src/**/*.{ts,tsx,astro}').flatMap((from) =>
  importsOf(from, readFileSync(from, 'utf8')),
);

/** One way round for each knot of imports: names from one to itself again. */
function cyclesIn(imports: readonly Import[]): readonly string[] {
  const next = new Map<string, string[]>();
  for (const { from, to } of imports) next.set(from, [...(next.get(from) ?? []), to]);
  const done = new Set<string>();
  const found: string[] = [];
  const visit = (file: string, road: readonly string[]): void => {
    const at = road.indexOf(file);
    if (at >= 0) found.push([...road.slice(at), file].join(' → '));
    if (at >= 0 || done.has(file)) return;
    for (const to of next.get(file) ?? []) visit(to, [...road, file]);
    done.add(file);
  };
  for (const file of next.keys()) visit(file, []);
  return found;
}

test('every import of src leads to a file', () => {
  expect(importsOfSrc.length).toBeGreaterThan(1000);
  expect(importsOfSrc.filter(({ to }) => !existsSync(to))).toEqual([]);
});

test('no import cycles in src, types included', () => {
  expect(cyclesIn(importsOfSrc)).toEqual([]);
});

test.each([
  `import { Other } from './other.ts';`,
  `import type { Other } from './other.ts';`,
  `import './other.ts';`,
  `export * from './other.ts';`,
  `export type { Other } from './other.ts';`,
  `const other = await import('./other.ts');`,
  `const { Other } = await import('#core/other.ts?bundle');`,
  `type Other = import('./other.ts').Other;`,
])('a cycle is found by: %s', (line) => {
  const one = importsOf('src/core/one.ts', `${line}\nexport class One {}\n`);
  const other = importsOf('src/core/other.ts', `import { Third } from '../third.ts';\n`);
  const third = importsOf('src/third.ts', `import { One } from '#core/one.ts';\n`);
  expect(cyclesIn([...one, ...other, ...third])).toEqual([
    'src/core/one.ts → src/core/other.ts → src/third.ts → src/core/one.ts',
  ]);
  expect(cyclesIn([...one, ...other])).toEqual([]);
});

test('imports of an Astro file and of its script are seen', () => {
  const text = `---\nimport '../one.ts';\n---\n<p>from './no.ts'</p>\n<script>\n  import '#core/other.ts';\n</script>\n`;
  expect(importsOf('src/ui/Page.astro', text).map(({ to }) => to)).toEqual([
    'src/one.ts',
    'src/core/other.ts',
  ]);
});

/** Imports as seen in the folder that both files stand in: `{ from: 'model/', to: 'index.ts' }`. */
function byFolder(imports: readonly Import[]): Map<string, Import[]> {
  const seen = new Map<string, Import[]>();
  for (const { from, to } of imports) {
    const [a, b] = [from.split('/'), to.split('/')];
    const depth = a.findIndex((part, at) => part !== b[at]);
    const name = (path: readonly string[]) => path[depth] + (path.length > depth + 1 ? '/' : '');
    const folder = a.slice(0, depth).join('/');
    seen.set(folder, [...(seen.get(folder) ?? []), { from: name(a), to: name(b) }]);
  }
  return seen;
}

/** Folders that can be reached from themselves. */
function circular(imports: readonly Import[]): string[] {
  const between = imports.filter(({ from, to }) => from !== to && from.endsWith('/') && to.endsWith('/'));
  const below = (folder: string, seen = new Set<string>()): Set<string> => {
    for (const { to } of between.filter(({ from }) => from === folder)) {
      if (!seen.has(to)) below(to, seen.add(to));
    }
    return seen;
  };
  return [...new Set(between.map(({ from }) => from))].filter((folder) => below(folder).has(folder));
}

test('no folder of src stands on itself by way of the folders beside it', () => {
  const folders = byFolder(importsOfSrc);
  expect(folders.size).toBeGreaterThan(30);
  for (const [folder, imports] of folders) expect(circular(imports), folder).toEqual([]);
  expect(circular([...folders.get('src')!, { from: 'core/', to: 'pages/' }])).toContain('core/');
});

test.each(Object.keys(stages))('no stage of src/%s imports a file beside the stages', (folder) => {
  const imports = byFolder(importsOfSrc).get(`src/${folder}`) ?? [];
  expect(imports.length).toBeGreaterThan(0);
  expect(imports.filter(({ from, to }) => from.endsWith('/') && !to.endsWith('/'))).toEqual([]);
});
