/** How an order is put for whoever takes posts, and how the answer is read. */
import { encode } from '#order/text.ts';
import { foldCompact } from '#order/mail.ts';
import type { OrderWords } from '#words/order.ts';
import type { PostRoad } from '../../model/input.ts';
import type { Answer } from '../../model/ports.ts';
import { judge, judgeForm, type Judgement } from './sendResult.ts';
import type { Entry } from './outbox.ts';
import { orderLines } from './write.ts';

export type Wire = {
  readonly address: string;
  /** Media type of what `write` gives. */
  readonly type: string;
  readonly write: (entry: Entry) => string;
  readonly judge: (number: string, answer: Answer) => Judgement;
  /** Vain tries from which on silence means that the buyer mails it herself. */
  readonly mostSilent: number;
};

/**
 * A form service may take a post and yet keep its answer from the page (no
 * CORS header); going on for ever would fill the maker's mailbox.
 */
const MOST_SILENT_FORMS = 3;

export function wireOf({ kind, address }: PostRoad, words: OrderWords): Wire {
  if (kind === 'form') {
    return {
      address,
      type: 'application/x-www-form-urlencoded',
      write: (entry) => formText(entry, words),
      judge: judgeForm,
      mostSilent: MOST_SILENT_FORMS,
    };
  }
  return {
    address,
    type: 'application/json',
    write: ({ order }) => JSON.stringify(order),
    judge,
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
