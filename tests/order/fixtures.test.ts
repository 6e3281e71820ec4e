import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { readDocument } from '#order/migrate.ts';
import { decode, encode } from '#order/text.ts';
import { sample } from './orders.ts';

const read = (name: string) => readFileSync(`tests/fixtures/orders/${name}`, 'utf8');

/** Written once and never again: an order kept in a drawer must open in every later version. */
it('reads every form of a version 1 order ever sent', () => {
  expect(readDocument(JSON.parse(read('v1-bracelet.json')))).toEqual({ ok: true, document: sample });
  expect(decode(read('v1-bracelet.txt'))).toEqual({ ok: true, document: sample });
  expect(decode(read('v1-bracelet.mail.txt'))).toEqual({ ok: true, document: sample });
  expect(encode(sample)).toBe(read('v1-bracelet.txt').trim());
});
