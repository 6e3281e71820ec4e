import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkOrder } from '#order/check.ts';
import { readDocument, type DocumentProblem } from '#order/migrate.ts';
import { orderJsonSchema } from '#order/schema.ts';
import { decode } from '#order/text.ts';
import { mutateDocument, mutateText, seeded } from './mutate.ts';
import { anyOrder, posted, sample } from './orders.ts';

/** 20,000 as a rule; a million where CLASPWISE_THOROUGH is set (two minutes). */
const MUTANTS = process.env.CLASPWISE_THOROUGH ? 1_000_000 : 12_000;
const published: unknown = JSON.parse(readFileSync('public/schema/order-4.json', 'utf8'));
const ajv = new Ajv2020({ strict: false, allErrors: false });
const byJsonSchema = ajv.compile(published as object);

/**
 * What a JSON Schema can't say: that a check character is right and a day exists; it counts code points,
 * and, written for validators of all languages, it knows no properties of characters.
 */
const BEYOND_SCHEMA =
  /^(number|placedAt|measure\.text|instead\.(clasp|pendant)\.name|buyer\.(name|email|note)|delivery\.to\.\w+|choices)$/;

describe('the check of a document and its published JSON Schema', () => {
  it('both take every legal document', () => {
    fc.assert(
      fc.property(anyOrder, (order) => {
        expect(checkOrder(order)).toBe(null);
        expect(byJsonSchema(order)).toBe(true);
      }),
    );
  });

  it(`agree on ${MUTANTS} mutants, and name what they refuse`, { timeout: 900_000 }, () => {
    const random = seeded(20261125);
    let refused = 0;
    let read = 0;
    for (let mutant = 0; mutant < MUTANTS; mutant += 1) {
      const value = mutateDocument(posted, random);
      const wrong = checkOrder(value);
      const bySchema = byJsonSchema(value);
      if (wrong === null && !bySchema) throw new Error(`schema refuses ${JSON.stringify(value)}`);
      if (wrong !== null && bySchema && !BEYOND_SCHEMA.test(wrong)) {
        throw new Error(`schema takes ${wrong}: ${JSON.stringify(value)}`);
      }
      const document = readDocument(JSON.parse(JSON.stringify(value) ?? 'null'));
      if (document.ok) read += 1;
      else expect(document.problem.code).toMatch(/^[a-z-]+$/);
      if (wrong !== null) refused += 1;
    }
    expect(refused).toBeGreaterThan(MUTANTS / 2);
    expect(read).toBeGreaterThan(MUTANTS / 25);
  });

  it(`never take one of ${MUTANTS} mutated texts for another order`, { timeout: 900_000 }, () => {
    const random = seeded(7);
    let same = 0;
    for (let mutant = 0; mutant < MUTANTS; mutant += 1) {
      const text = mutateText(posted, random);
      const read = decode(text);
      if (read.ok) {
        expect(read.document).toEqual(posted);
        same += 1;
      } else {
        expect(read.problem.code).toMatch(
          /^(no-order|cut-off|too-long|newer-version|unknown-version|damaged|not-an-order)$/,
        );
      }
    }
    // Noise that mail adds is meant to be survived; a change of content never.
    expect(same).toBeLessThan(MUTANTS);
    expect(same).toBeGreaterThan(MUTANTS / 50);
  });

  it('does not hang on a megabyte of anything', () => {
    const parts = ['claspwise4.', 'A', '=', '> ', '\n', '<br>', '&shy;', '.end', 'claspwise', '=3D'];
    for (const part of parts) {
      const text = part.repeat(Math.ceil(1_000_000 / part.length));
      expect(decode(text).ok).toBe(false);
      expect(decode(`claspwise1.${text}`).ok).toBe(false);
    }
  });
});

describe('the published JSON Schema', () => {
  it('is the one made of the table that is checked by', () => {
    expect(published).toEqual(JSON.parse(JSON.stringify(orderJsonSchema())));
  });
});

describe('a document of another age', () => {
  it.each<readonly [unknown, DocumentProblem]>([
    [null, { code: 'not-an-order' }],
    [[], { code: 'not-an-order' }],
    [{ ...sample, format: 'other' }, { code: 'not-an-order' }],
    [
      { ...sample, version: 5 },
      { code: 'newer-version', version: 5 },
    ],
    [
      { ...sample, version: 0 },
      { code: 'unknown-version', version: '0' },
    ],
    ...[undefined, null, NaN, 1.5, '1', true].map(
      (version) =>
        [
          { ...sample, version },
          { code: 'wrong-field', field: 'version' },
        ] as const,
    ),
    [
      { ...sample, version: { toString: 1 } },
      { code: 'wrong-field', field: 'version' },
    ],
    [
      { ...sample, quantity: 0 },
      { code: 'wrong-field', field: 'quantity' },
    ],
    [
      { ...sample, buyer: { ...sample.buyer, email: 'a@b' } },
      { code: 'wrong-field', field: 'buyer.email' },
    ],
    [
      { ...sample, delivery: { by: 'pigeon' } },
      { code: 'wrong-field', field: 'delivery.by' },
    ],
    [
      { ...sample, delivery: { by: 'collection', to: {} } },
      { code: 'wrong-field', field: 'delivery.to' },
    ],
    [
      { ...posted, delivery: { by: 'post', to: { name: 'Iris', line1: '\u202e ' } } },
      { code: 'wrong-field', field: 'delivery.to.line1' },
    ],
    [
      { ...sample, extra: 1 },
      { code: 'wrong-field', field: 'extra' },
    ],
  ])('is refused by name: %#', (value, problem) => {
    expect(readDocument(value)).toEqual({ ok: false, problem });
  });
});
