import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import Ajv2020 from 'ajv/dist/2020.js';
import { expect, it } from 'vitest';
import { EXIT } from '../../src/command/size/exit.ts';
import { run } from '../../src/command/size/run.ts';

const root = resolve(import.meta.dirname, '../..');
const schema: object = JSON.parse(readFileSync(resolve(root, 'public/schema/size-found.json'), 'utf8'));
const matches = new Ajv2020({ strict: true }).compile(schema);

function size(...argv: string[]) {
  const out: string[] = [];
  const err: string[] = [];
  const code = run(argv, {
    stdin: () => '',
    out: (text) => out.push(text),
    err: (text) => err.push(text),
    content: resolve(root, 'tests/fixtures/size'),
  });
  return { code, out: out.join('\n'), err: err.join('\n') };
}

it.each([
  ['drop', '--found', '17 1/2 in', 444.5],
  ['focal', '--found-girth', '178mm', 178],
])('%s %s %s: counts that explain the measure, likeliest first', (piece, option, text, mm) => {
  const { code, out } = size(piece, option, text, '--json');
  const json = JSON.parse(out);
  matches(json);
  expect([code, matches.errors ?? []]).toEqual([EXIT.fits, []]);
  const shares: number[] = json.explanations.map(({ share }: { share: number }) => share);
  expect(shares).toEqual([...shares].sort((one, other) => other - one));
  for (const { measuresMm, offMm } of json.explanations) expect(measuresMm - offMm).toBeCloseTo(mm, 2);
});

it('says them in sentences of either language, and takes one measure only', () => {
  expect(size('drop', '--found', '17 1/2 in').out).toContain('likeliest first');
  expect(size('drop', '--found', '44 cm', '--lang', 'de').out).toContain('wahrscheinlichste zuerst');
  expect(size('drop', '--found', '17 in', '--length', '17 in').code).toBe(EXIT.usage);
  expect(size('drop', '--found', '0').code).toBe(EXIT.usage);
});
