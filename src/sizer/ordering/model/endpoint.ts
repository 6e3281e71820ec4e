/** How an order is put for whoever takes posts, and how the answer is read. */
import { encode } from '#order/text.ts';
import { foldCompact } from '#order/mail.ts';
import type { OrderWords } from '#words/words.ts';
import type { PostTarget } from '../../model/input.ts';
import type { Answer } from '../../model/ports.ts';
import { readDeskAnswer, readFormAnswer, type SendResult } from './sendResult.ts';
import type { Entry } from './outbox.ts';
import { orderLines } from './write.ts';

export type Endpoint = {
  readonly address: string;
  /** Media type of what `write` gives. */
  readonly type: string;
  readonly write: (entry: Entry) => string;
  readonly read: (number: string, answer: Answer) => SendResult;
  /** Vain tries from which on silence means that the buyer mails it herself. */
  readonly mostSilent: number;
};

/**
 * A form service may take a post and yet keep its answer from the page (no
 * CORS header); going on for ever would fill the maker's mailbox.
 */
const MOST_SILENT_FORMS = 3;

export function endpointOf({ kind, address }: PostTarget, words: OrderWords): Endpoint {
  if (kind === 'form') {
    return {
      address,
      type: 'application/x-www-form-urlencoded',
      write: (entry) => formText(entry, words),
      read: readFormAnswer,
      mostSilent: MOST_SILENT_FORMS,
    };
  }
  return {
    address,
    type: 'application/json',
    write: ({ order }) => JSON.stringify(order),
    read: readDeskAnswer,
    mostSilent: Infinity,
  };
}

/** Fields of a form post: what a person reads, where to answer, and the compact form for the bench. */
function formText({ order, pieceName }: Entry, words: OrderWords): string {
  return new URLSearchParams({
    subject: words.mailSubject(order.number, pieceName),
    email: order.buyer.email,
    summary: orderLines(order, pieceName, words).join('\n'),
    order: foldCompact(encode(order)),
  }).toString();
}
