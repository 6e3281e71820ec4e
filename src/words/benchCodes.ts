/** Codes that the bench makes sentences of. */

/** Where an order stands, in the order in which it goes. */
export const ORDER_STATES = ['new', 'asked', 'agreed', 'strung', 'sent', 'cancelled'] as const;
export type OrderState = (typeof ORDER_STATES)[number];

/** `paid`: money that came in. `refunded`: money that went back. */
export const PAYMENT_KINDS = ['paid', 'refunded'] as const;
export type PaymentKind = (typeof PAYMENT_KINDS)[number];

/** By which way money went. */
export const PAYMENT_WAYS = ['transfer', 'card', 'cash', 'other'] as const;
export type PaymentWay = (typeof PAYMENT_WAYS)[number];

/** Papers with a number of their own; a credit note takes an invoice back. */
export type InvoiceKind = 'invoice' | 'credit-note';

/** How an order's money stands. `settled`: nothing is open. `to-pay-back`: more is here than is owed. */
export type MoneyStanding = 'unpaid' | 'part-paid' | 'settled' | 'to-pay-back';

/** Why a sum could not be read; `text` as it was typed. */
export type SumProblem =
  | { readonly code: 'sum-missing' | 'sum-nothing' | 'sum-too-large' }
  | { readonly code: 'sum-unreadable' | 'sum-ambiguous'; readonly text: string }
  | { readonly code: 'sum-too-fine'; readonly text: string; readonly digits: number }
  | { readonly code: 'sum-other-currency'; readonly text: string; readonly currency: string };

/** Why money was not written down. */
export type LedgerProblem =
  | { readonly code: 'more-than-open'; readonly openMinor: number; readonly currency: string }
  | { readonly code: 'more-than-paid'; readonly hereMinor: number; readonly currency: string }
  | { readonly code: 'refund-rests-on-it' };

/** Why a change was not made; what was typed is shown again. */
export type ChangeProblem =
  | SumProblem
  | LedgerProblem
  | { readonly code: 'day-unreadable' | 'day-ahead'; readonly text: string }
  | { readonly code: 'reason-missing' }
  | { readonly code: 'parcel-empty' }
  | { readonly code: 'address-incomplete' }
  | { readonly code: 'invoice-stands'; readonly invoice: string }
  | { readonly code: 'not-agreed' | 'no-seller' | 'buyer-erased' }
  | { readonly code: 'changed-meanwhile' };

/** What moved stock. `strung`: an order took it. `put-aside`: wire cut off the reel and kept. `struck`: takes another back. */
export const MOVEMENT_KINDS = [
  'received',
  'counted',
  'strung',
  'broken',
  'sold',
  'put-aside',
  'struck',
] as const;
export type MovementKind = (typeof MOVEMENT_KINDS)[number];

/** Where somebody sat who changed stock: at the shop's own machine, or signed in from elsewhere. */
export type StockHand = 'machine' | 'visit';

/** How an order that she enters by hand came to her. */
export const HAND_WAYS = ['fair', 'telephone', 'mail'] as const;
export type HandWay = (typeof HAND_WAYS)[number];

/** Among an order's choices: a piece to restring. Only what the maker entered herself is believed to be one. */
export const RESTRING = { work: 'restring' } as const;

/** How an order came in. */
export const ORDER_WAYS = ['desk', 'paste', 'file', 'link', ...HAND_WAYS] as const;
export type OrderWay = (typeof ORDER_WAYS)[number];

/** What became of one order that was pasted or dropped. */
export type Arrived =
  | { readonly code: 'received'; readonly number: string; readonly source: string }
  | { readonly code: 'same'; readonly number: string; readonly source: string }
  | { readonly code: 'number-taken'; readonly number: string; readonly source: string }
  | { readonly code: 'refused'; readonly source: string; readonly why: ArrivalProblem };

/** Why a text or file gave no order. */
export type ArrivalProblem =
  | { readonly code: 'no-order' }
  /** Nothing in the file; nothing pasted and no file chosen. */
  | { readonly code: 'empty-file' | 'empty-form' }
  /** No code in it, but it reads like the e-mail that a piece's page offers without JavaScript. */
  | { readonly code: 'plain'; readonly text: string }
  /** Bytes that are no UTF-8, and no code in them. */
  | { readonly code: 'not-utf8' }
  | { readonly code: 'cut-off' }
  | { readonly code: 'too-long' }
  | { readonly code: 'newer-version'; readonly version: number }
  | { readonly code: 'unknown-version'; readonly version: number | string }
  | { readonly code: 'damaged' }
  | { readonly code: 'not-an-order' }
  | { readonly code: 'wrong-field'; readonly field: string }
  | { readonly code: 'file-too-large'; readonly mostMb: number }
  | { readonly code: 'too-many-mails'; readonly most: number };

/** Why the bench can't show or do something. */
export type BenchProblem =
  | { readonly code: 'book-locked' | 'book-full' | 'book-read-only' | 'book-unreachable' }
  | { readonly code: 'not-a-book' | 'newer-book' | 'book-broken' | 'book-gone' | 'order-damaged' }
  /** Of an uploaded backup. */
  | { readonly code: 'backup-broken' | 'backup-newer' | 'no-backup' }
  | {
      readonly code:
        | 'changed-meanwhile'
        | 'no-such-order'
        | 'no-such-buyer'
        | 'no-such-invoice'
        | 'no-such-piece'
        | 'no-such-entry'
        | 'bad-form'
        | 'upload-too-large'
        | 'upload-broken';
    }
  | { readonly code: 'wrong-host' | 'cross-site' | 'no-passphrase' | 'needs-https' | 'sign-in' }
  | { readonly code: 'wrong-passphrase' | 'passphrase-length' }
  /** Of paired devices, and of the page that pairs them. */
  | { readonly code: 'unpaired' | 'not-on-tablet' | 'pairing-over' | 'device-name' | 'only-here' }
  | { readonly code: 'too-many-tries'; readonly seconds: number };

/** Prepared letters to the buyer. */
export const LETTERS = ['question', 'address', 'agreed', 'ready', 'sent'] as const;
export type Letter = (typeof LETTERS)[number];

/** A parcel on its way; each '' where it isn't known, `link` null where the carrier has no page for it. */
export type ParcelFacts = {
  readonly carrier: string;
  readonly tracking: string;
  readonly link: string | null;
};

/** How it reaches the buyer: lines of the address; or where she comes for it, null where the shop says nothing of that. */
export type DeliveryFacts =
  | { readonly by: 'unsaid' }
  | { readonly by: 'collection'; readonly where: string | null }
  | { readonly by: 'post'; readonly lines: readonly string[] };

/** What a letter says; figures written out already. */
export type LetterFacts = {
  readonly name: string;
  readonly number: string;
  readonly piece: string;
  readonly quantity: number;
  /** It goes as it lies finished. */
  readonly asItLies: boolean;
  /** How it stands with the one that lies finished; null where hers is strung for her. */
  readonly standing: 'lies' | 'asked-before' | 'gone' | null;
  readonly size: string;
  /** Of the strands, the shortest first, those that read alike once. */
  readonly lengths: readonly string[];
  /** Of all of it, postage within. */
  readonly price: string;
  readonly withPostage: boolean;
  readonly weeks: number;
  /** Day by which she expects to have it ready; null where none is set. */
  readonly due: string | null;
  readonly delivery: DeliveryFacts;
  /** Where and when she could come for it; null where nobody can. */
  readonly collection: string | null;
  /** What has come in; null where nothing has. */
  readonly paid: string | null;
  /** What is still to be paid; null where nothing is. */
  readonly open: string | null;
  /** Payment address for what is open; null for none. */
  readonly payment: string | null;
  /** What it was sent in; null where that isn't written down. */
  readonly parcel: ParcelFacts | null;
  readonly maker: string;
  readonly shop: string;
  /** What differs from what she saw, a sentence each. */
  readonly differences: readonly string[];
};
