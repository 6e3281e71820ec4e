/** What a parcel costs to post. Shop page, desk and bench all reckon by this. */
import type { PostGroup, PostRules } from './rules.ts';

export type Parcel = {
  /** ISO 3166-1, two letters. */
  readonly country: string;
  /** Of one piece, packing left out. */
  readonly massG: number;
  /** Of one piece, minor units. */
  readonly priceMinor: number;
  readonly quantity: number;
};

export type Postage =
  | { readonly kind: 'price'; readonly priceMinor: number }
  /** The order's value has come to `fromMinor`. */
  | { readonly kind: 'free'; readonly fromMinor: number }
  | { readonly kind: 'too-heavy'; readonly weightG: number; readonly mostG: number }
  | { readonly kind: 'not-served'; readonly country: string };

/** Masses are added up of hundredths; what is less than a milligram over a band is rounding. */
const ROUNDING_G = 0.001;

/** Postage of a parcel. A parcel too heavy for every band has none, whatever it is worth. */
export function postage(rules: PostRules, parcel: Parcel): Postage {
  const { country } = parcel;
  const group = groupOf(rules, country);
  if (group === null) return { kind: 'not-served', country };
  const weightG = parcelWeightG(rules, parcel);
  const band = group.bands.find(({ upToG }) => weightG <= upToG + ROUNDING_G);
  if (band === undefined) return { kind: 'too-heavy', weightG, mostG: group.bands.at(-1)?.upToG ?? 0 };
  const { freeFromMinor } = group;
  if (freeFromMinor !== null && parcel.priceMinor * parcel.quantity >= freeFromMinor) {
    return { kind: 'free', fromMinor: freeFromMinor };
  }
  return { kind: 'price', priceMinor: band.priceMinor };
}

/** What a postage adds to an order, minor units; null where the parcel can't be posted. */
export function postageMinor(one: Postage): number | null {
  if (one.kind === 'price') return one.priceMinor;
  return one.kind === 'free' ? 0 : null;
}

/** Weight of the whole parcel, g: its pieces and the packing. */
export function parcelWeightG(
  { packingG }: Pick<PostRules, 'packingG'>,
  { massG, quantity }: Pick<Parcel, 'massG' | 'quantity'>,
): number {
  return massG * quantity + packingG;
}

function groupOf({ groups }: PostRules, country: string): PostGroup | null {
  return (
    groups.find(({ countries }) => countries.includes(country)) ??
    groups.find(({ elsewhere }) => elsewhere) ??
    null
  );
}
