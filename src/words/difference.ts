/** What differs between an order as the buyer saw it and as the bench computes it, in codes. */
import type { SizingProblem } from '#core/sizing/sizing.ts';

export type Difference =
  | { readonly code: 'no-such-piece'; readonly piece: string }
  | { readonly code: 'revision'; readonly shown: string; readonly now: string }
  | {
      readonly code: 'price';
      readonly shownMinor: number;
      readonly nowMinor: number;
      readonly shownIn: string;
    }
  /** Of the whole order, by the shop's rules of posting. */
  | {
      readonly code: 'postage';
      readonly shownMinor: number;
      readonly nowMinor: number;
      readonly shownIn: string;
    }
  /** What can't go as the buyer chose; grams of the whole parcel. */
  | { readonly code: 'post-too-heavy'; readonly weightG: number; readonly mostG: number }
  | { readonly code: 'post-not-served'; readonly country: string }
  | { readonly code: 'no-collection' }
  | { readonly code: 'currency'; readonly shown: string; readonly now: string }
  | { readonly code: 'length'; readonly shownMm: number; readonly nowMm: number }
  | { readonly code: 'girth'; readonly shownMm: number; readonly nowMm: number }
  | { readonly code: 'counts' }
  | {
      readonly code: 'outside';
      readonly side: 'below' | 'above';
      readonly leastMm: number;
      readonly mostMm: number;
    }
  /** Either hand would do when she ordered, so that she wasn't asked; now it matters. */
  | { readonly code: 'hand-unasked' }
  | { readonly code: 'refused'; readonly problem: SizingProblem }
  /** A part chosen instead of the listed one, which the maker doesn't offer with this piece; as the buyer read it. */
  | { readonly code: 'not-offered'; readonly part: 'clasp' | 'pendant'; readonly name: string }
  /** The one that lay finished is promised by another order, or lies there no more ('' for its number). */
  | { readonly code: 'ready-gone'; readonly number: string }
  /** Another order for the one that lies finished came before; nothing is agreed yet. */
  | { readonly code: 'asked-before'; readonly number: string }
  /** One lies finished, and more were ordered. */
  | { readonly code: 'ready-several'; readonly quantity: number }
  /** The size in words isn't the size in millimetres. */
  | { readonly code: 'written'; readonly text: string; readonly mm: number }
  /** The buyer's clock is more than a day ahead of the maker's. */
  | { readonly code: 'clock'; readonly placedAt: string; readonly receivedAt: string };
