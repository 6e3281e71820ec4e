/** As much of an order as its sentences need: the order document has this shape, and more. */
import type { Hand, Measure, Sit } from '#core/design/choice.ts';
import type { AddressFacts } from './address.ts';

export type OrderFacts = {
  readonly number: string;
  /** ISO 8601 instant. */
  readonly placedAt: string;
  readonly piece: { readonly id: string; readonly revision: string };
  readonly made: 'to-measure' | 'ready';
  /** Parts chosen instead of the listed ones, as they were read; '' for those. */
  readonly instead: Readonly<Record<'clasp' | 'pendant', { readonly name: string }>>;
  readonly measure: { readonly of: Measure['of']; readonly text: string; readonly mm: number };
  readonly sit: Sit;
  readonly hand: Hand;
  /** `hand` is `either` where either hand will do, whatever the field above says. */
  readonly choices: Readonly<Record<string, string>>;
  readonly quantity: number;
  readonly buyer: { readonly name: string; readonly email: string; readonly note: string };
  readonly delivery: DeliveryFacts;
  readonly shown: {
    /** Of each strand. */
    readonly counts: readonly (readonly number[])[];
    /** Of the longest strand where there are several. */
    readonly lengthMm: number;
    /** Of every strand where there are several and it is known; else empty. */
    readonly strandsMm: readonly number[];
    readonly insideGirthMm: number;
    readonly priceMinor: number;
    readonly postageMinor: number;
  };
};

/** The hand that an order is for; `either` where it doesn't matter, and she wasn't asked. */
export const handIn = ({ hand, choices }: Pick<OrderFacts, 'hand' | 'choices'>): Hand | 'either' =>
  choices['hand'] === 'either' ? 'either' : hand;

/** As much of an order as its size in words needs. */
export type SizeFacts = Pick<OrderFacts, 'made'> & {
  readonly measure: Pick<OrderFacts['measure'], 'of' | 'text'>;
  readonly shown: Pick<OrderFacts['shown'], 'counts' | 'strandsMm'>;
};

/** What a tape shows of a piece. */
export type MeasuredFacts = Pick<OrderFacts['shown'], 'counts' | 'strandsMm' | 'lengthMm' | 'insideGirthMm'>;

/** How an order reaches the buyer. */
export type DeliveryFacts =
  | { readonly by: 'unsaid' }
  | { readonly by: 'collection' }
  | { readonly by: 'post'; readonly to: AddressFacts };

/** One line of a summary, a slip or a mail. */
export type OrderRow = { readonly label: string; readonly value: string };

/** Why an order isn't with the maker yet, as the buyer's browser knows it. */
export type SendProblem =
  /** The piece that lay finished is promised to somebody else. */
  | { readonly code: 'ready-gone' }
  /** The device says that it has no network. */
  | { readonly code: 'offline' }
  /** No answer came, or one that was no receipt. */
  | { readonly code: 'no-answer' }
  /** The shop has no room or is locked at the moment. */
  | { readonly code: 'shop-trouble'; readonly status: number }
  | { readonly code: 'too-many' }
  /** The shop won't take it as it is; `reason` is its own sentence, '' where it gave none. */
  | { readonly code: 'turned-down'; readonly reason: string };

/** What is wrong in the order form. */
export type FormProblem =
  | { readonly code: 'name-missing' }
  | { readonly code: 'name-long'; readonly most: number }
  | { readonly code: 'email-missing' }
  | { readonly code: 'email-wrong' }
  | { readonly code: 'note-long'; readonly most: number }
  | { readonly code: 'quantity'; readonly most: number }
  | { readonly code: 'line1-missing' }
  | { readonly code: 'town-missing' }
  | { readonly code: 'postcode-missing' }
  | { readonly code: 'country-missing' }
  /** A part of the address. */
  | { readonly code: 'part-long'; readonly most: number }
  /** More than the shop posts in one parcel, grams. */
  | { readonly code: 'parcel-heavy'; readonly mostG: number }
  /** The beads don't reach for that many of exactly this piece. */
  | { readonly code: 'stock' };
