/** One change to an order, from its form to the answer. */
import type { Catalogue } from '#catalogue/model/catalogue.ts';
import type { BenchProblem, StockHand } from '#words/benchCodes.ts';
import { change, type Change } from './book/change.ts';
import type { InvoiceContent } from './book/invoiceContent.ts';
import { invoicesOf } from './book/invoices.ts';
import type { Book } from './book/open.ts';
import { pieceNow } from './check/pieceNow.ts';
import { readChange } from './intake/changeForm.ts';
import type { Attempt } from './models/attempt.ts';
import { frameIn, type Frame } from './models/frame.ts';
import { stockNow, takesOfEntry } from './stock/stockNow.ts';
import { invoiceContent, prefixOf } from './models/invoice.ts';
import { orderDetail, orderedName, type OrderDetail } from './models/orderDetail.ts';

export type Changed =
  /** Where to look now. */
  | { readonly outcome: 'done'; readonly location: `/${string}` }
  | { readonly outcome: 'trouble'; readonly problem: BenchProblem; readonly status: number }
  /** Not done: the order as it is now, with the form as it was filled in. */
  | {
      readonly outcome: 'again';
      readonly detail: OrderDetail;
      readonly attempt: Attempt;
      readonly status: number;
    };

/** Does what a form of the order's page asks for. `who`: at which machine she sits. Throws BookError. */
export function changeOrder(
  book: Book,
  catalogue: Catalogue,
  number: string,
  form: URLSearchParams,
  frame: Frame,
  who: StockHand = 'machine',
): Changed {
  const detail = orderDetail(book, catalogue, number, frame);
  if (detail === null) return { outcome: 'trouble', problem: { code: 'no-such-order' }, status: 404 };
  const { due, figure } = detail.money;
  const read = readChange(form, {
    currency: due.currency,
    now: frame.now,
    invoice: () => invoiceFor(detail, catalogue, frame),
  });
  if (read === null) return { outcome: 'trouble', problem: { code: 'bad-form' }, status: 400 };
  const again = (problem: Attempt['problem'], status: number): Changed => ({
    outcome: 'again',
    detail: orderDetail(book, catalogue, number, frame) ?? detail,
    attempt: { form, problem },
    status,
  });
  if ('problem' in read) return again(read.problem, 422);
  const wanted = withTakes(book, catalogue, detail, read.change, who);
  const outcome = change(book, number, read.version, frame.now, wanted, figure);
  if (outcome === 'no-such-order') {
    return { outcome: 'trouble', problem: { code: outcome }, status: 404 };
  }
  if (outcome === 'changed-meanwhile') return again({ code: outcome }, 409);
  if (outcome !== 'done') return again(outcome, 422);
  if (read.change.kind === 'invoice' || read.change.kind === 'credit-note') {
    const last = invoicesOf(book, number).at(-1);
    return { outcome: 'done', location: `/bench/invoices/${encodeURIComponent(last?.invoice ?? '')}/` };
  }
  const write = read.write === null ? '' : `?write=${read.write}`;
  return { outcome: 'done', location: `/bench/orders/${number}/${write}` };
}

/** A new state with what the order takes once it is strung, by the maker's copy and what there is for it. */
function withTakes(
  book: Book,
  catalogue: Catalogue,
  { entry, now }: OrderDetail,
  wanted: Change,
  who: StockHand,
): Change {
  if (wanted.kind !== 'state') return wanted;
  const there = stockNow(book, catalogue).thereFor(entry);
  // What can't be made of the piece as it stands now is agreed on as it stood.
  const piece = now.checked.candidate === null ? null : pieceNow(catalogue, entry.document.piece.id);
  return { ...wanted, piece, stock: { takes: takesOfEntry(book, catalogue, entry, there), who } };
}

/** In the buyer's language, the piece's name too. */
function invoiceFor(
  detail: OrderDetail,
  catalogue: Catalogue,
  frame: Frame,
): { readonly prefix: string; readonly content: InvoiceContent } | null {
  const { seller } = catalogue.shop;
  const { document } = detail.entry;
  const { lang } = document;
  const named = { ...detail, pieceName: orderedName(catalogue, document, lang) };
  const content = invoiceContent(named, frameIn(lang, frame));
  return seller === null || content === null ? null : { prefix: prefixOf(seller, frame.now), content };
}
