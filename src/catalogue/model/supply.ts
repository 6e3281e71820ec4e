/** How a thing is bought, and how few of it may be left. */

/** Units that beads and findings are sold in. */
export const SOLD_BY = ['piece', 'strand', 'pack', 'bag'] as const;
/** Units that wire is sold in. */
export const WIRE_SOLD_BY = ['spool'] as const;
export type SoldBy = (typeof SOLD_BY)[number] | (typeof WIRE_SOLD_BY)[number];

export type Sold = {
  readonly by: SoldBy;
  /** What one unit holds, at least one: pieces, or mm of wire. */
  readonly holds: number;
  /** Pieces reckoned from a strand's length or a bag's weight, and not counted by the seller. */
  readonly estimated: boolean;
  /** Of one unit. */
  readonly priceMinor: number;
  readonly supplier: string | null;
  /** The supplier's own number; null where it is that of the bag. */
  readonly number: string | null;
};

export type Supply = {
  /** Pieces, or mm of wire, below which it is to be bought; null for no such mark. */
  readonly keep: number | null;
  /** Null where she wrote nothing of it. */
  readonly sold: Sold | null;
};
