/** Numbers that look random and are the same each time (mulberry32). */
export type Random = {
  /** From 0 up to, not including, 1. */
  readonly next: () => number;
  /** A whole number from `least` to `most`. */
  readonly between: (least: number, most: number) => number;
  readonly pick: <Item>(items: readonly [Item, ...Item[]]) => Item;
};

export function randomFrom(seed: number): Random {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const between = (least: number, most: number): number => least + Math.floor(next() * (most - least + 1));
  return { next, between, pick: (items) => items[between(0, items.length - 1)] ?? items[0] };
}
