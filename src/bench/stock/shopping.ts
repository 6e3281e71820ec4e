/** What is to be bought: what is needed and kept, less what there is, with spares, in the units that things are sold in. */
import type { StockNow } from './stockNow.ts';
import type { Thing } from './things.ts';

/** One reason to need a thing: an order by its number, or a piece that is to be made by its id. */
export type NeedFor = { readonly of: 'order' | 'piece'; readonly id: string; readonly amount: number };

export type ToBuy = {
  readonly thing: Thing;
  /** Pieces, or mm of wire, all reasons together. */
  readonly need: number;
  readonly reasons: readonly NeedFor[];
  /** What there is, below 0 where more was strung than that. */
  readonly have: number;
  /** What is to be there besides: its mark, where that counts. */
  readonly keep: number;
  /** Without spares. */
  readonly missing: number;
  /** Bought besides, by the shop's rule. */
  readonly spare: number;
  /** Strands, packs, bags or spools; where she wrote nothing of buying it, pieces or metres. */
  readonly units: number;
  /** Of one of them, minor units. */
  readonly priceMinor: number;
};

export type Shopping = {
  /** By supplier, those without one last; null for them. */
  readonly suppliers: readonly {
    readonly name: string | null;
    readonly rows: readonly ToBuy[];
    readonly sumMinor: number;
  }[];
  readonly sumMinor: number;
  /** Needed, and nobody counts it: to look at. */
  readonly uncounted: readonly { readonly thing: Thing; readonly need: number }[];
};

/** Metres are bought whole where nothing is said of spools. */
const MM_PER_M = 1000;

export type ShoppingRules = {
  /** Whether marks count. */
  readonly marks: boolean;
  readonly sparePercent: number;
};

/** Pieces or mm in one unit of what is bought. */
export const unitHolds = ({ sold, wire }: Pick<Thing, 'sold' | 'wire'>): number =>
  sold?.holds ?? (wire ? MM_PER_M : 1);

function toBuy(
  thing: Thing,
  reasons: readonly NeedFor[],
  have: number,
  { marks, sparePercent }: ShoppingRules,
): ToBuy {
  const need = reasons.reduce((sum, { amount }) => sum + amount, 0);
  const keep = marks ? (thing.keep ?? 0) : 0;
  const missing = Math.max(0, need + keep - have);
  // Rounded down: one spare for every ten, and none for a clasp alone.
  const spare = Math.floor((missing * sparePercent) / 100);
  const units = Math.ceil((missing + spare) / unitHolds(thing));
  const priceMinor = thing.sold?.priceMinor ?? thing.costMinor;
  return { thing, need, reasons, have, keep, missing, spare, units, priceMinor };
}

/**
 * @param things in the order in which they stand on the list
 * @param needs by thing
 */
export function shoppingOf(
  things: readonly Thing[],
  needs: ReadonlyMap<string, readonly NeedFor[]>,
  stock: Pick<StockNow, 'onHand'>,
  rules: ShoppingRules,
): Shopping {
  const rows: ToBuy[] = [];
  const uncounted: { thing: Thing; need: number }[] = [];
  for (const thing of things) {
    const reasons = needs.get(thing.key) ?? [];
    const have = stock.onHand(thing.key);
    if (have !== null) {
      const row = toBuy(thing, reasons, have, rules);
      if (row.missing > 0) rows.push(row);
    } else if (reasons.length > 0) {
      uncounted.push({ thing, need: reasons.reduce((sum, { amount }) => sum + amount, 0) });
    }
  }
  const names = [...new Set(rows.map(({ thing }) => thing.sold?.supplier ?? null))].sort((a, b) => {
    if (a === null || b === null) return a === b ? 0 : a === null ? 1 : -1;
    return a.localeCompare(b);
  });
  const sumOf = (some: readonly ToBuy[]): number =>
    some.reduce((sum, { units, priceMinor }) => sum + units * priceMinor, 0);
  const suppliers = names.map((name) => {
    const own = rows.filter(({ thing }) => (thing.sold?.supplier ?? null) === name);
    return { name, rows: own, sumMinor: sumOf(own) };
  });
  return { suppliers, sumMinor: sumOf(rows), uncounted };
}
