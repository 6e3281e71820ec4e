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

/** For each specifier, what the import rule says of it in a file of `folder`. One file with all of them: to lint costs more than to find. */
async function bites(folder: string, specifiers: readonly string[]): Promise<ReadonlyMap<string, string[]>> {
  const imports = specifiers.map((specifier, at) => `import { thing as thing${at} } from '${specifier}';\n`);
  const [result] = await eslint.lintText(imports.join(''), { filePath: `src/${folder}/deliberate.ts` });
  const said = (result?.messages ?? []).filter(
    ({ ruleId }) => ruleId === '@typescript-eslint/no-restricted-imports',
  );
  return new Map(
    specifiers.map((specifier, at) => [
      specifier,
      said.filter(({ line }) => line === at + 1).map(({ message }) => message),
    ]),
  );
}

/** What is said where each of them bites once with these words. */
const eachWith = (specifiers: readonly string[], why: string): ReadonlyMap<string, unknown> =>
  new Map(specifiers.map((specifier) => [specifier, [expect.stringContaining(why)]]));
const noneOf = (specifiers: readonly string[]): ReadonlyMap<string, unknown> =>
  new Map(specifiers.map((specifier) => [specifier, []]));

test.each(folders)('%s: what it may not import bites and says why', async (folder) => {
  const { may, why } = table[folder] as Layer;
  const others = folders.filter((other) => other !== folder && !may.includes(other));
  const forbidden = others.map((other) => `#${other}/thing.ts`);
  if (!may.includes('node')) forbidden.push('node:fs');
  if (!may.includes('zod')) forbidden.push('zod');
  if (!may.includes('preact')) forbidden.push('preact/hooks');
  expect(await bites(folder, forbidden)).toEqual(eachWith(forbidden, why));
});

test.each(folders)('%s: what it may import passes', async (folder) => {
  const { may } = table[folder] as Layer;
  const allowed = may.filter((name) => folders.includes(name)).map((name) => `#${name}/thing.ts`);
  allowed.push('./beside.ts');
  expect(await bites(folder, allowed)).toEqual(noneOf(allowed));
});

test('a relative path into another folder bites, so that a move shows in one place', async () => {
  const beside = ['../ui/thing.ts'];
  expect(await bites('pages', beside)).toEqual(eachWith(beside, '#folder/'));
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
  const later = after.flatMap(({ name: other }) => [`../${other}/thing.ts`, `../../${other}/inner/thing.ts`]);
  const earlier = [...before, { name }].map(({ name: other }) => `../${other}/thing.ts`);
  expect(await bites(`${folder}/${name}`, [...later, ...earlier])).toEqual(
    new Map([...eachWith(later, why), ...noneOf(earlier)]),
  );
});

test.each(Object.entries(stages))('every folder of src/%s is a stage', (folder, list) => {
  const inside = readdirSync(new URL(`../../src/${folder}`, import.meta.url), { withFileTypes: true });
  const folders = inside.filter((entry) => entry.isDirectory()).map((entry) => entry.name);
  expect(folders.toSorted()).toEqual(list.map(({ name }) => name).toSorted());
});
