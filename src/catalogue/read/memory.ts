/**
 * What a reader keeps from one reading to the next, so that only what has
 * changed is read, checked and built again: each result beside all that it was
 * made of. Whoever reads once begins with an empty one.
 */
export type Memory = Map<string, { readonly of: readonly unknown[]; readonly value: unknown }>;

/**
 * The last result under `name`, where it was made of the very same; else it is made anew.
 * @param of everything that `make` looks at: texts and figures by value, anything else by identity
 */
export function remembered<Value>(
  memory: Memory,
  name: string,
  of: readonly unknown[],
  make: () => Value,
): Value {
  const last = memory.get(name);
  const same = last?.of.length === of.length && last.of.every((one, at) => Object.is(one, of[at]));
  // Whatever lies under the name was made by the same maker.
  if (last !== undefined && same) return last.value as Value;
  const value = make();
  memory.set(name, { of, value });
  return value;
}
