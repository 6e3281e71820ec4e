/** How much there is of each component, for one order: a copy of a piece with those numbers in it. */
import type { Component } from '#core/design/component.ts';
import type { Design } from '#core/design/design.ts';
import { tally } from '#core/design/tally.ts';
import type { Candidate } from '#core/sizing/sizing.ts';
import type { Snapshot } from '../book/snapshot.ts';

/** How many of a component may be taken, below 0 where more is promised than there is; null where nobody counts. */
export type There = (component: string) => number | null;

/** As if there were always enough. */
export const UNCOUNTED: There = () => null;

/** Copies kept of one copy: each has other numbers in it, which change with every order that is agreed. */
const MOST_KEPT = 20;
const made = new WeakMap<Snapshot, Map<string, Snapshot>>();

/** The copy with what there is in place of what it says itself; the same object for the same numbers, so that what is computed of it can be kept by it. */
export function withStock(copy: Snapshot, there: There): Snapshot {
  const numbers = Object.values(copy.design.components).map(({ id, stock }) => {
    const now = there(id);
    return { id, stock, now: now === null ? null : Math.max(0, now) };
  });
  if (numbers.every(({ stock, now }) => stock === now)) return copy;
  const key = JSON.stringify(numbers.map(({ now }) => now));
  const known = made.get(copy) ?? new Map<string, Snapshot>();
  made.set(copy, known);
  const found = known.get(key);
  if (found !== undefined) return found;
  const components: Record<string, Component> = { ...copy.design.components };
  for (const { id, now } of numbers) components[id] = { ...components[id]!, stock: now };
  const counted = { ...copy, design: { ...copy.design, components } };
  const [oldest] = known.keys();
  if (known.size >= MOST_KEPT && oldest !== undefined) known.delete(oldest);
  known.set(key, counted);
  return counted;
}

/** Whether what the design's components say of their stock is enough for so many pieces with these counts. */
export function reaches(design: Design, { counts }: Candidate, quantity: number): boolean {
  return [...tally(design, counts)].every(
    ([id, count]) => count * quantity <= (design.components[id]?.stock ?? Infinity),
  );
}
