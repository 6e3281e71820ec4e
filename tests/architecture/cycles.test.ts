/** No file may stand on itself by way of others, and no folder on one beside it that stands on it. */
import { globSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, normalize } from 'node:path';
import { cruise, type ICruiseResult } from 'dependency-cruiser';
import { expect, test } from 'vitest';
import { stages } from '../../.config/layers.mjs';

async function cyclesIn(baseDir: string, folder: string) {
  const { output } = await cruise([folder], {
    baseDir,
    doNotFollow: { path: 'node_modules' },
    exclude: { path: 'node_modules' },
    enhancedResolveOptions: { extensions: ['.ts', '.tsx'] },
    tsPreCompilationDeps: 'specify',
    // Without it the rules are read and not applied.
    validate: true,
    ruleSet: {
      forbidden: [{ name: 'no-cycle', severity: 'error', from: {}, to: { circular: true } }],
    },
  });
  const { summary, modules } = output as ICruiseResult;
  const cycles = summary.violations.map((violation) => `${violation.from} → ${violation.to}`);
  return { files: modules.length, cycles };
}

test('no import cycles in src, types included', { timeout: 180_000 }, async () => {
  const { files, cycles } = await cyclesIn(new URL('../..', import.meta.url).pathname, 'src');
  expect(files).toBeGreaterThan(300);
  expect(cycles).toEqual([]);
});

test.each(['import', 'import type'])('a cycle by %s is found', async (keyword) => {
  const folder = mkdtempSync(join(tmpdir(), 'cycle-'));
  try {
    writeFileSync(join(folder, 'one.ts'), `${keyword} { Other } from './other.ts';\nexport class One {}\n`);
    writeFileSync(join(folder, 'other.ts'), `import { One } from './one.ts';\nexport class Other {}\n`);
    const { cycles } = await cyclesIn(folder, '.');
    expect(cycles).toEqual([expect.stringMatching(/one\.ts → other\.ts|other\.ts → one\.ts/)]);
  } finally {
    rmSync(folder, { recursive: true });
  }
});

type Import = { readonly from: string; readonly to: string };

/** Every import of one file of src by another, Astro's included. */
function importsOfSrc(): Import[] {
  return globSync('src/**/*.{ts,tsx,astro}').flatMap((from) =>
    [...readFileSync(from, 'utf8').matchAll(/(?:from|import|import\()\s*'([#.][^'?]+)/g)].map(([, spec]) => ({
      from,
      to: spec!.startsWith('#') ? `src/${spec!.slice(1)}` : normalize(join(from, '..', spec!)),
    })),
  );
}

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
  const folders = byFolder(importsOfSrc());
  expect(folders.size).toBeGreaterThan(30);
  for (const [folder, imports] of folders) expect(circular(imports), folder).toEqual([]);
  expect(circular([...folders.get('src')!, { from: 'core/', to: 'pages/' }])).toContain('core/');
});

test.each(Object.keys(stages))('no stage of src/%s imports a file beside the stages', (folder) => {
  const imports = byFolder(importsOfSrc()).get(`src/${folder}`) ?? [];
  expect(imports.length).toBeGreaterThan(0);
  expect(imports.filter(({ from, to }) => from.endsWith('/') && !to.endsWith('/'))).toEqual([]);
});
