/** Forms are read off the schemas: every field there is asked for, an invented one too. */
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { fields, listOf, money, oneOf, quantity, text, yesNo } from '#catalogue/fields/field.ts';
import { componentSchema } from '#catalogue/schemas/component.ts';
import { describeFields, type FormField } from '#catalogue/schemas/describe.ts';
import { guideSchema } from '#catalogue/schemas/guide.ts';
import { pieceSchema } from '#catalogue/schemas/piece.ts';
import { shopSchema } from '#catalogue/schemas/shop.ts';
import { wireSchema } from '#catalogue/schemas/wire.ts';

describe('the fields of a schema', () => {
  const all = { componentSchema, wireSchema, guideSchema, pieceSchema, shopSchema };

  it.each(Object.entries(all))('%s: all of them, in its order', (_, schema) => {
    expect(describeFields(schema).map(({ name }) => name)).toEqual(Object.keys(schema.shape));
  });

  it('say what each holds, whether it has to be there, and what stands in for it', () => {
    const schema = fields({
      polish: oneOf(['matt', 'bright']).default('matt'),
      knot: quantity('length', 1, 20),
      gift: fields({ card: text(80), price: money.optional() }).optional(),
      ends: listOf(fields({ glued: yesNo })),
    });
    expect(describeFields(schema)).toEqual<FormField[]>([
      {
        ...{ name: 'polish', required: false, fallback: 'matt' },
        shape: { kind: 'oneOf', options: ['matt', 'bright'] },
      },
      {
        ...{ name: 'knot', required: true, fallback: null },
        shape: { kind: 'quantity', dimension: 'length', least: 1, most: 20, unit: 'mm' },
      },
      {
        ...{ name: 'gift', required: false, fallback: null },
        shape: {
          kind: 'group',
          fields: [
            { name: 'card', required: true, fallback: null, shape: { kind: 'text', most: 80 } },
            { name: 'price', required: false, fallback: null, shape: { kind: 'money' } },
          ],
        },
      },
      {
        ...{ name: 'ends', required: true, fallback: null },
        shape: {
          kind: 'list',
          item: {
            kind: 'group',
            fields: [{ name: 'glued', required: true, fallback: null, shape: { kind: 'yesNo' } }],
          },
        },
      },
    ]);
  });

  it('are refused where a schema was made past the kinds, for its form would lack a field', () => {
    expect(() => describeFields(z.strictObject({ loose: z.string() }))).toThrow(/kind/);
  });
});
