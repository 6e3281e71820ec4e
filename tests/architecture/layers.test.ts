/** Every import direction must bite, with its own sentence; and every allowed one must pass. */
import { readdirSync } from 'node:fs';
import { ESLint } from 'eslint';
import { expect, test } from 'vitest';
import { layers, stages } from '../../.config/layers.mjs';

const eslint = new ESLint({
  cwd: new URL('../..', import.meta.url).pathname,
  overrideConfigFile: '.config/eslint.config.mjs',
});

type Layer = { readonly may: readonly string[]; readonly why: string };
const table: Record<string, Layer> = layers;
const folders = Object.keys(table);

/** Messages of the import rule for one line in a file of `folder`. */
async function bites(folder: string, specifier: string): Promise<string[]> {
  const code = `import { thing } from '${specifier}';\nexport const other = thing;\n`;
  const [result] = await eslint.lintText(code, { filePath: `src/${folder}/deliberate.ts` });
  return (result?.messages ?? [])
    .filter((message) => message.ruleId === '@typescript-eslint/no-restricted-imports')
    .map((message) => message.message);
}

test.each(folders)('%s: what it may not import bites and says why', async (folder) => {
  const { may, why } = table[folder] as Layer;
  const forbidden = folders.filter((other) => other !== folder && !may.includes(other));
  for (const other of forbidden) {
    expect(await bites(folder, `#${other}/thing.ts`), `${folder} → ${other}`).toEqual([
      expect.stringContaining(why),
    ]);
  }
  if (!may.includes('node')) expect(await bites(folder, 'node:fs')).toEqual([expect.stringContaining(why)]);
  if (!may.includes('zod')) expect(await bites(folder, 'zod')).toEqual([expect.stringContaining(why)]);
  if (!may.includes('preact'))
    expect(await bites(folder, 'preact/hooks')).toEqual([expect.stringContaining(why)]);
});

test.each(folders)('%s: what it may import passes', async (folder) => {
  const { may } = table[folder] as Layer;
  const allowed = may.filter((name) => folders.includes(name)).map((name) => `#${name}/thing.ts`);
  for (const specifier of [...allowed, './beside.ts']) {
    expect(await bites(folder, specifier), `${folder} → ${specifier}`).toEqual([]);
  }
});

test('a relative path into another folder bites, so that a move shows in one place', async () => {
  expect(await bites('pages', '../ui/thing.ts')).toEqual([expect.stringContaining('#folder/')]);
});

test.each(['Date.now()', 'Math.random()', 'performance.now()', 'fetch("/")', 'process.cwd()'])(
  'core has no %s',
  async (expression) => {
    const [result] = await eslint.lintText(`export const value = ${expression};\n`, {
      filePath: 'src/core/deliberate.ts',
    });
    const rules = (result?.messages ?? []).map((message) => message.ruleId);
    expect(rules.some((rule) => /^no-restricted-(globals|properties)$/.test(rule ?? ''))).toBe(true);
  },
);

const everyStage = Object.entries(stages).flatMap(([folder, list]) =>
  list.map((stage, at) => ({ folder, ...stage, before: list.slice(0, at), after: list.slice(at + 1) })),
);

test.each(everyStage)('$folder/$name imports no later stage, and says why', async (stage) => {
  const { folder, name, why, before, after } = stage;
  for (const later of after) {
    for (const specifier of [`../${later.name}/thing.ts`, `../../${later.name}/inner/thing.ts`]) {
      const found = await bites(`${folder}/${name}`, specifier);
      expect(found, `${name} → ${later.name}`).toEqual([expect.stringContaining(why)]);
    }
  }
  for (const earlier of [...before, { name }]) {
    expect(await bites(`${folder}/${name}`, `../${earlier.name}/thing.ts`)).toEqual([]);
  }
});

test.each(Object.entries(stages))('every folder of src/%s is a stage', (folder, list) => {
  const inside = readdirSync(new URL(`../../src/${folder}`, import.meta.url), { withFileTypes: true });
  const folders = inside.filter((entry) => entry.isDirectory()).map((entry) => entry.name);
  expect(folders.toSorted()).toEqual(list.map(({ name }) => name).toSorted());
});
