/**
 * The order document: all that a buyer asked for and was shown, in one piece
 * of JSON that both sides speak. See `README.md` here for the specification.
 * The maker's side believes none of its figures: it computes them again.
 */
import type { Hand, Measure, Pick, Sit, InsteadPart } from '#core/design/choice.ts';
import type { Counts } from '#core/design/design.ts';
import type { Lang } from '#words/lang.ts';

export const FORMAT = 'claspwise-order';
/** The version written; older ones are read through `migrate.ts`. */
export const VERSION = 4;

/** Caps of all versions so far. Each is far above what a real order needs and small enough to store and show at once. */
export const CAPS = {
  /** A piece's id or revision. */
  id: 64,
  /** A size as the buyer wrote it. */
  text: 40,
  name: 100,
  /** An address is at most 254 characters (RFC 5321, 4.5.3.1.3). */
  email: 254,
  note: 1000,
  /** A line, a town, a region of an address: carriers print 40 or so. */
  addressLine: 100,
  /** The longest postcodes have 10 characters (from memory). */
  postcode: 20,
  /** A component's name, as the shop's language has it. */
  part: 80,
  /** A choice's name, and how many there may be. */
  choiceKey: 24,
  choices: 8,
  choiceValue: 80,
  quantity: 99,
  strands: 16,
  sections: 64,
  repeats: 10_000,
  /** Any length: ten metres. */
  mm: 10_000,
  /** Any price: exact in JSON and beyond every necklace. */
  minor: 1_000_000_000,
} as const;

/** What the buyer's page showed when she ordered. */
export type Figures = {
  /** Finished length, of the longest strand where there are several; hundredths of a millimetre kept. */
  readonly lengthMm: number;
  /** Of every strand where there are several, in the design's order; empty for one strand, and in documents before version 4. */
  readonly strandsMm: readonly number[];
  readonly insideGirthMm: number;
  readonly counts: Counts;
  /** Of one piece. */
  readonly priceMinor: number;
  /** Within the total that was shown; 0 where none was: free, collected, or not asked. */
  readonly postageMinor: number;
  /** ISO 4217. */
  readonly currency: string;
};

/** The parts of an address, in the order in which the compact form has them for ever. */
export const ADDRESS_PARTS = ['name', 'line1', 'line2', 'town', 'region', 'postcode', 'country'] as const;

/**
 * Where a parcel goes, in as few parts as the addresses of all countries need
 * (Universal Postal Union, S42: addressee, delivery lines, town, region,
 * postcode, country). A part that a country doesn't have is empty.
 */
export type Address = {
  /** Whose door it is; not always the buyer. */
  readonly name: string;
  readonly line1: string;
  readonly line2: string;
  readonly town: string;
  /** County, state, province, prefecture. */
  readonly region: string;
  readonly postcode: string;
  /** ISO 3166-1, two letters. */
  readonly country: string;
};

/** Most characters of each part. */
export const ADDRESS_CAPS: Readonly<Record<keyof Address, number>> = {
  name: CAPS.name,
  line1: CAPS.addressLine,
  line2: CAPS.addressLine,
  town: CAPS.addressLine,
  region: CAPS.addressLine,
  postcode: CAPS.postcode,
  country: 2,
};

/** The ways of delivery, in the order in which the compact form counts them for ever. */
export const DELIVERIES = ['unsaid', 'collection', 'post'] as const;

/** How the pieces reach the buyer. `unsaid`: she wasn't asked, as in version 1, or it has been erased. */
export type Delivery =
  { readonly by: 'unsaid' } | { readonly by: 'collection' } | { readonly by: 'post'; readonly to: Address };

/** `to-measure`: strung for the buyer. `ready`: the piece that lies finished, as it lies there. In the order in which the compact form counts them for ever. */
export const MADE = ['to-measure', 'ready'] as const;
export type Made = (typeof MADE)[number];

/** A component chosen instead of the listed one: its id, and its name as the buyer read it. Both empty: as listed. */
export type ChosenPart = { readonly id: string; readonly name: string };
export type Instead = Readonly<Record<InsteadPart, ChosenPart>>;

/** The piece with the parts it is listed with. */
export const AS_LISTED: Instead = { clasp: { id: '', name: '' }, pendant: { id: '', name: '' } };

/** Among an order's choices: she wasn't asked for a hand, since either will do; `hand` then says nothing. */
export const EITHER_HAND = { hand: 'either' } as const;

export type OrderDocument = {
  readonly format: typeof FORMAT;
  readonly version: typeof VERSION;
  /** `XXX-XXX-XXX`, see `number.ts`. */
  readonly number: string;
  /** Instant by the buyer's clock, UTC, whole seconds: `2026-11-25T18:40:00Z`. */
  readonly placedAt: string;
  /** Language the buyer read, for the answer. */
  readonly lang: Lang;
  readonly piece: { readonly id: string; readonly revision: string };
  readonly made: Made;
  readonly instead: Instead;
  /** Of a ready piece its finished length, with no text. */
  readonly measure: {
    readonly of: Measure['of'];
    /** As the buyer wrote it. */
    readonly text: string;
    readonly mm: number;
  };
  readonly sit: Sit;
  readonly hand: Hand;
  readonly pick: Pick;
  readonly quantity: number;
  /** Anything else a shop lets the buyer choose, by name. */
  readonly choices: Readonly<Record<string, string>>;
  readonly buyer: { readonly name: string; readonly email: string; readonly note: string };
  readonly delivery: Delivery;
  readonly shown: Figures;
};
