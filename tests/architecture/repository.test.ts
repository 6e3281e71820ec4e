/** What is tracked: only what belongs there, and nothing that ties it to one machine. */
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const root = new URL('../..', import.meta.url).pathname;
const tracked = execFileSync('git', ['ls-files', '-z'], { cwd: root, encoding: 'utf8' })
  .split('\0')
  .filter(Boolean);

const TOP_LEVEL = [
  'package.json',
  'package-lock.json',
  'tsconfig.json',
  'astro.config.mjs',
  'README.md',
  'DEVELOPERS.md',
  'src',
  'content',
  'tests',
  'public',
];

test('the top level holds what it should and nothing else', () => {
  const names = new Set(tracked.map((path) => path.split('/')[0] as string));
  const strangers = [...names].filter((name) => !name.startsWith('.') && !TOP_LEVEL.includes(name));
  expect(strangers).toEqual([]);
});

test('no folder is a drawer for what has no home', () => {
  expect(tracked.filter((path) => /(^|\/)(utils?|helpers?|lib|common|misc)(\/|\.ts$)/.test(path))).toEqual(
    [],
  );
});

test('no tracked text names a place on one machine, or a package host', () => {
  // Spelled in parts, so that this file doesn't find itself.
  const banned = [
    ['/wo', 'rk/'],
    ['/home', '/'],
    ['/ro', 'ot/'],
    ['registry.npm', 'js'],
    ['../sha', 'red'],
  ].map((parts) => parts.join(''));
  const text = tracked.filter((path) =>
    /\.(ts|tsx|astro|mjs|json|md|yaml|yml|css|txt|html)$|run$/.test(path),
  );
  const found = text.flatMap((path) => {
    const content = readFileSync(root + path, 'utf8');
    return banned.filter((word) => content.includes(word)).map((word) => `${path}: ${word}`);
  });
  expect(found).toEqual([]);
});
