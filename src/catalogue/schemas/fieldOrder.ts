/** The order in which a schema has its fields, down to those within them. */
import { z } from 'zod';

/** What stands behind optional, usual and list-or-one. */
function bare(schema: unknown): unknown {
  if (schema instanceof z.ZodOptional || schema instanceof z.ZodDefault) return bare(schema.unwrap());
  if (schema instanceof z.ZodPipe) return bare(schema.out);
  return schema;
}

/** Names of the fields at a path within an entry; none where a path leads to no fields. */
export function fieldOrder(schema: z.ZodType, path: readonly (string | number)[]): readonly string[] {
  const at = path.reduce<unknown>((one, step) => {
    const within = bare(one);
    if (within instanceof z.ZodArray) return typeof step === 'number' ? within.element : null;
    return within instanceof z.ZodObject ? (within.shape as Record<string, unknown>)[step] : null;
  }, schema);
  const fields = bare(at);
  return fields instanceof z.ZodObject ? Object.keys(fields.shape) : [];
}
