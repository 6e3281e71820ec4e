import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { readDocument } from '#order/migrate.ts';
import { decode, encode } from '#order/text.ts';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { nested, posted, ready, sample, swapped } from './orders.ts';

const read = (name: string) => readFileSync(`tests/fixtures/orders/${name}`, 'utf8');

/** Written once and never again: an order kept in a drawer must open in every later version. */
it('reads every form of a version 1 order ever sent', () => {
  expect(readDocument(JSON.parse(read('v1-bracelet.json')))).toEqual({ ok: true, document: sample });
  expect(decode(read('v1-bracelet.txt'))).toEqual({ ok: true, document: sample });
  expect(decode(read('v1-bracelet.mail.txt'))).toEqual({ ok: true, document: sample });
  expect(encode(sample)).not.toBe(read('v1-bracelet.txt').trim());
});

it('still publishes the schema of version 1, and version 1 orders keep to it', () => {
  const schema = JSON.parse(readFileSync('public/schema/order-1.json', 'utf8')) as object;
  const byJsonSchema = new Ajv2020({ strict: false }).compile(schema);
  expect(byJsonSchema(JSON.parse(read('v1-bracelet.json')))).toBe(true);
  expect(byJsonSchema(sample)).toBe(false);
});

it('reads every form of a version 2 order ever sent', () => {
  const document = posted;
  expect(readDocument(JSON.parse(read('v2-posted.json')))).toEqual({ ok: true, document });
  expect(decode(read('v2-posted.txt'))).toEqual({ ok: true, document });
  expect(decode(read('v2-posted.mail.txt'))).toEqual({ ok: true, document });
  expect(encode(posted)).not.toBe(read('v2-posted.txt').trim());
});

it('still publishes the schema of version 2, and version 2 orders keep to it', () => {
  const schema = JSON.parse(readFileSync('public/schema/order-2.json', 'utf8')) as object;
  const byJsonSchema = new Ajv2020({ strict: false }).compile(schema);
  expect(byJsonSchema(JSON.parse(read('v2-posted.json')))).toBe(true);
  expect(byJsonSchema(posted)).toBe(false);
});

it.each([
  ['v3-swapped', swapped],
  ['v3-ready', ready],
])('reads every form of a version 3 order ever sent, %s', (name, document) => {
  expect(readDocument(JSON.parse(read(`${name}.json`)))).toEqual({ ok: true, document });
  expect(decode(read(`${name}.txt`))).toEqual({ ok: true, document });
  expect(decode(read(`${name}.mail.txt`))).toEqual({ ok: true, document });
  expect(encode(document)).not.toBe(read(`${name}.txt`).trim());
});

it('still publishes the schema of version 3, and version 3 orders keep to it', () => {
  const schema = JSON.parse(readFileSync('public/schema/order-3.json', 'utf8')) as object;
  const byJsonSchema = new Ajv2020({ strict: false }).compile(schema);
  expect(byJsonSchema(JSON.parse(read('v3-swapped.json')))).toBe(true);
  expect(byJsonSchema(swapped)).toBe(false);
});

it('reads every form of a version 4 order ever sent', () => {
  const document = nested;
  expect(readDocument(JSON.parse(read('v4-nested.json')))).toEqual({ ok: true, document });
  expect(decode(read('v4-nested.txt'))).toEqual({ ok: true, document });
  expect(decode(read('v4-nested.mail.txt'))).toEqual({ ok: true, document });
  expect(encode(document)).toBe(read('v4-nested.txt').trim());
});

it('carries no more over from version 1 than stood there', () => {
  const old = JSON.parse(read('v1-bracelet.json')) as typeof sample;
  const field = (value: unknown) => readDocument(value);
  expect(field({ ...old, shown: null })).toMatchObject({ problem: { field: 'shown.lengthMm' } });
  expect(field({ ...old, shown: 'x' })).toMatchObject({ problem: { field: 'shown' } });
  expect(field({ ...old, delivery: 'by hand' })).toMatchObject({ problem: { field: 'delivery' } });
});
