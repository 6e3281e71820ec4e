/** The slip: one order to keep, to print, to show. */
import type { Sentences } from '../sentence.ts';

/** Why an address holds no order; the codes of the compact form. */
export type SlipProblem =
  | { readonly code: 'no-order' }
  | { readonly code: 'cut-off' }
  | { readonly code: 'too-long' }
  | { readonly code: 'newer-version'; readonly version: number }
  | { readonly code: 'unknown-version'; readonly version: number }
  | { readonly code: 'damaged' }
  | { readonly code: 'not-an-order' };

const problems: Sentences<SlipProblem> = {
  'no-order': () =>
    'This address holds no order. Open the slip by the link that you kept, whole, with everything after the #.',
  'cut-off': () => 'The end of the address is missing. Copy the link again, down to “.end”.',
  'too-long': () => 'This address is too long to be an order.',
  'newer-version': () => 'This order was written by a newer version of the shop. Load the page again.',
  'unknown-version': () => 'This order has a version that never was.',
  damaged: () => 'A character of the address is wrong or missing. Copy the link again.',
  'not-an-order': () => 'The address is whole, but what it holds is no order.',
};

export const slip = {
  problems,
  title: 'Order slip',
  description: 'One order on a slip, to keep and to print. It is written in the address itself.',
  numberIs: (number: string): string => `Order ${number}`,
  placed: (date: string): string => `Written ${date} by the buyer’s clock.`,
  print: 'Print this slip',
  download: 'Download the order',
  copyLink: 'Copy the link',
  copied: 'Copied.',
  seePiece: 'See the piece',
  code: 'Scan to open this slip on another device',
  codeTooLong: 'This order is too long for a QR code; copy the link instead.',
  inAddress:
    'The order is in the link of this page and nowhere else: no server sees it. Whoever has the link can read your name, where it goes and your note, so give it only to whom you mean.',
  forMaker: 'For the maker: paste this link, or the text below, into the order book.',
  compact: 'The order in one word',
  offline: 'This page opens without a network too, once it has been opened on this device.',
  noScript:
    'The slip is read by JavaScript on this device. Without it, keep the e-mail or the downloaded file.',
};
