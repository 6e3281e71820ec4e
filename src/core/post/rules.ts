/** The shop's rules of posting, as data. */

/** What a parcel of at most so much costs. */
export type WeightBand = { readonly upToG: number; readonly priceMinor: number };

/** Countries that cost the same. */
export type PostGroup = {
  /** ISO 3166-1, two letters each; a country stands in one group only. */
  readonly countries: readonly string[];
  /** Also every country that no group names; true of one group at most. */
  readonly elsewhere: boolean;
  /** Value of the pieces from which postage is free, minor units; null for never. */
  readonly freeFromMinor: number | null;
  /** Lightest first; each begins where the one before it ends, and none costs less than a lighter one. */
  readonly bands: readonly WeightBand[];
};

export type PostRules = {
  /** Box, tissue, card: added to what the pieces weigh. */
  readonly packingG: number;
  /** Empty where nothing is posted. */
  readonly groups: readonly PostGroup[];
  /** Whether a buyer may come for her order. */
  readonly collection: boolean;
};
