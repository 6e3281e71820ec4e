/** Who gets the beads that there are: first come, first served, in the order of work. */

export type Need = {
  readonly number: string;
  /** How many it takes, by component. */
  readonly parts: ReadonlyMap<string, number>;
};

export type Shortage = {
  readonly component: string;
  readonly need: number;
  /** How many of them aren't there when its turn comes. */
  readonly missing: number;
};

export type HandedOut = {
  readonly number: string;
  readonly given: ReadonlyMap<string, number>;
  /** What it lacks; empty where it can be begun. */
  readonly short: readonly Shortage[];
};

/**
 * Hands out what is counted; what isn't counted is taken to be there. An order
 * that lacks something keeps what it got, so that what all of them lack together
 * is what there is to buy.
 * @param needs in the order of work
 * @param stock how many there are, by component; null where nobody counts
 */
export function handOut(needs: readonly Need[], stock: (component: string) => number | null): HandedOut[] {
  const left = new Map<string, number>();
  return needs.map(({ number, parts }) => {
    const given = new Map<string, number>();
    const short: Shortage[] = [];
    for (const [component, need] of parts) {
      const there = left.get(component) ?? stock(component);
      if (there === null) continue;
      const got = Math.min(need, there);
      left.set(component, there - got);
      given.set(component, got);
      if (got < need) short.push({ component, need, missing: need - got });
    }
    return { number, given, short };
  });
}
