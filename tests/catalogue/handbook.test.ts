import { readFileSync } from 'node:fs';
import { cpSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it, onTestFinished } from 'vitest';
import { report } from '#catalogue/read/problem.ts';
import { readCatalogue } from '#catalogue/load/readCatalogue.ts';

const content = new URL('../../content', import.meta.url).pathname;

it('the handbook’s own examples can be read as they stand', () => {
  const handbook = readFileSync(join(content, 'README.md'), 'utf8');
  const blocks = [...handbook.matchAll(/```(?:yaml|markdown)\n([\s\S]*?)```/g)].map((match) => match[1]!);
  expect(blocks.length).toBe(5);
  const [ball, tube, piece, teach, guide] = blocks as [string, string, string, string, string];
  const folder = mkdtempSync(join(tmpdir(), 'claspwise-handbook-'));
  onTestFinished(() => rmSync(folder, { recursive: true }));
  cpSync(content, folder, { recursive: true });
  writeFileSync(join(folder, 'components/new.yaml'), `${ball}\n${tube}`);
  writeFileSync(join(folder, 'pieces/heron-standing.yaml'), `${piece}\n${teach}`);
  writeFileSync(join(folder, 'guides/en/storing.md'), guide);
  const { catalogue, problems, notes } = readCatalogue(folder);
  expect(report([...problems, ...notes], 'en')).toBe('');
  expect(catalogue?.pieces.map(({ id }) => id)).toContain('heron-standing');
  expect(catalogue?.pieces.find(({ id }) => id === 'heron-standing')?.teach?.offered).toBe(true);
  expect(catalogue?.guides.map(({ id }) => id)).toContain('storing');
});
