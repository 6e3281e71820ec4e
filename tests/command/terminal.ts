/** The `size` command run in this process, and its answers held to their published form. */
import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import Ajv2020 from 'ajv/dist/2020.js';
import { run } from '../../src/command/size/run.ts';

export const root = resolve(import.meta.dirname, '../..');
/** A small shop of its own, beside the demo's. */
export const content = resolve(root, 'tests/fixtures/size');

/** @param from the content folder */
export function size(argv: readonly string[], stdin = '', from = content) {
  const out: string[] = [];
  const err: string[] = [];
  const code = run(argv, {
    stdin: () => stdin,
    out: (text) => out.push(text),
    err: (text) => err.push(text),
    content: from,
  });
  return { code, out: out.join('\n'), err: err.join('\n') };
}

/** Says what is wrong with a value by the schema `public/schema/<name>.json`. */
export function bySchema(name: string): (value: unknown) => readonly unknown[] {
  const schema: object = JSON.parse(readFileSync(resolve(root, `public/schema/${name}.json`), 'utf8'));
  const matches = new Ajv2020({ strict: true, allowUnionTypes: true }).compile(schema);
  return (value) => (matches(value) ? [] : (matches.errors ?? []));
}
