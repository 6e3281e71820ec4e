/** Where a new field goes among those that are there. */
import type { PlainMap } from './plain.ts';

/**
 * The names of `next`: those of `present` in the order they stand, each new one
 * behind the nearest that its schema has before it.
 * @param order names as the schema has them; what isn't among them goes last
 */
export function mergedKeys(present: readonly string[], next: PlainMap, order: readonly string[]): string[] {
  const names = present.filter((name) => Object.hasOwn(next, name));
  for (const name of Object.keys(next)) {
    if (names.includes(name)) continue;
    const place = order.indexOf(name);
    if (place < 0) {
      names.push(name);
      continue;
    }
    const before = order.slice(0, place).findLast((one) => names.includes(one));
    const after = order.slice(place + 1).find((one) => names.includes(one));
    if (before !== undefined) names.splice(names.indexOf(before) + 1, 0, name);
    else if (after !== undefined) names.splice(names.indexOf(after), 0, name);
    else names.push(name);
  }
  return names;
}

/** New fields in the order of their schema. */
export const inSchemaOrder = (fields: PlainMap, order: readonly string[]): PlainMap =>
  Object.fromEntries(mergedKeys([], fields, order).map((name) => [name, fields[name] ?? null]));
