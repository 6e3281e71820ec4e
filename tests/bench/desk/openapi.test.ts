import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { expect, it } from 'vitest';
import { answerOrder } from '#bench/desk/desk.ts';
import { problemResponse } from '#bench/desk/problem.ts';
import { deskWords } from '#words/words.ts';
import type { DeskProblem } from '#words/deskProblem.ts';
import { catalogue, openShop, orderFor, post } from '../shop.ts';

type Schema = Record<string, unknown>;
type OpenApi = {
  readonly paths: {
    readonly '/desk/orders': { readonly post: { readonly responses: Record<string, unknown> } };
  };
  readonly components: {
    readonly schemas: {
      readonly Receipt: Schema;
      readonly Problem: Schema & { readonly properties: { readonly code: { readonly enum: string[] } } };
    };
  };
};
const api = JSON.parse(readFileSync('public/schema/desk-openapi.json', 'utf8')) as OpenApi;
const { Receipt, Problem } = api.components.schemas;
const ajv = new Ajv2020({ strict: false, formats: { 'date-time': true } });

/** One problem of each code. */
const PROBLEMS: readonly DeskProblem[] = [
  { code: 'origin-not-allowed' },
  { code: 'method-not-allowed' },
  { code: 'content-type' },
  { code: 'too-large', mostBytes: 65536 },
  { code: 'not-utf8' },
  { code: 'not-json' },
  { code: 'not-an-order' },
  { code: 'newer-version', version: 3 },
  { code: 'unknown-version', version: 'x' },
  { code: 'wrong-field', field: 'sit' },
  { code: 'robot' },
  { code: 'number-taken', number: 'TX2-FYF-HTV' },
  { code: 'ready-gone', piece: 'weir-light' },
  { code: 'too-many', seconds: 3 },
  { code: 'book-locked' },
  { code: 'book-full' },
  { code: 'book-closed' },
];

it('is told every refusal there is, with its status, in both languages', async () => {
  expect(PROBLEMS.map(({ code }) => code).toSorted()).toEqual(Problem.properties.code.enum.toSorted());
  for (const lang of ['en', 'de'] as const) {
    const sentences = PROBLEMS.map((problem) => deskWords(lang).sentence(problem));
    expect(new Set(sentences).size).toBe(PROBLEMS.length);
    for (const problem of PROBLEMS) {
      const response = problemResponse(problem, lang);
      const body: unknown = await response.json();
      expect(ajv.validate(Problem, body), JSON.stringify(ajv.errors)).toBe(true);
      expect(api.paths['/desk/orders'].post.responses).toHaveProperty(String(response.status));
    }
  }
});

it('tells the receipt as it is', async () => {
  const shop = openShop(catalogue);
  const order = orderFor(catalogue, 'weir-light', 165.1);
  const tampered = { ...order, shown: { ...order.shown, priceMinor: 1 } };
  const response = await answerOrder(shop.desk, post(JSON.stringify(tampered)), '192.0.2.1');
  expect(ajv.validate(Receipt, await response.json()), JSON.stringify(ajv.errors)).toBe(true);
  shop.close();
});
