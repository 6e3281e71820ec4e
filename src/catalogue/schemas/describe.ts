/**
 * The fields of an entry as a form has to ask for them, read off its schema: a
 * field that is added there is asked for without a change here.
 */
import { z } from 'zod';
import { fieldKinds, type FieldKind } from '../fields/kind.ts';

/** What one field holds: a value, several alike, or fields of its own. */
export type FieldShape =
  | FieldKind
  | { readonly kind: 'list'; readonly item: FieldShape }
  | { readonly kind: 'group'; readonly fields: readonly FormField[] };

export type FormField = {
  readonly name: string;
  /** Nothing stands in for it where it is left out. */
  readonly required: boolean;
  /** What holds where it is left out; null where that is nothing. */
  readonly fallback: string | number | boolean | null;
  readonly shape: FieldShape;
};

/** Throws for a schema that no field was made of: what it asks for would be missing from every form. */
function shapeOf(schema: unknown): FieldShape {
  if (schema instanceof z.ZodObject) return { kind: 'group', fields: describeFields(schema) };
  const kind = schema instanceof z.ZodType ? fieldKinds.get(schema) : undefined;
  if (kind === undefined)
    throw new TypeError('a field of a schema has no kind; make it with fields/field.ts');
  return kind.kind === 'list' ? { kind: 'list', item: shapeOf(kind.item) } : kind;
}

function describeField(name: string, schema: unknown): FormField {
  if (schema instanceof z.ZodOptional) {
    return { name, required: false, fallback: null, shape: shapeOf(schema.unwrap()) };
  }
  if (schema instanceof z.ZodDefault) {
    const fallback: unknown = schema.def.defaultValue;
    const plain = ['string', 'number', 'boolean'].includes(typeof fallback);
    return {
      name,
      required: false,
      fallback: plain ? (fallback as FormField['fallback']) : null,
      shape: shapeOf(schema.unwrap()),
    };
  }
  return { name, required: true, fallback: null, shape: shapeOf(schema) };
}

/** The fields of a schema, in its order. */
export function describeFields(schema: z.ZodObject): readonly FormField[] {
  return Object.entries(schema.shape).map(([name, field]) => describeField(name, field));
}
