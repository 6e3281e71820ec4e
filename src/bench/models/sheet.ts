/** What the sheets of one order share: the order, and the frame in its buyer's language. */
import type { Catalogue } from '#catalogue/model/catalogue.ts';
import type { Bench } from '../context/bench.ts';
import { numberOf } from './numberOf.ts';
import { frameFor, frameIn, type Frame } from './frame.ts';
import { orderDetail, orderedName, type OrderDetail } from './orderDetail.ts';

export type Sheet = {
  readonly detail: OrderDetail;
  /** The maker's. */
  readonly frame: Frame;
  /** The buyer's, for what goes into the parcel. */
  readonly theirs: Frame;
};

/** Gathers a sheet; null where the book has no such order. Throws BookError. */
export function sheetFor(
  { book, nowMs }: Bench,
  catalogue: Catalogue,
  request: Request,
  number: string | undefined,
): Sheet | null {
  const frame = frameFor(request, catalogue.shop, nowMs());
  const detail = orderDetail(book(), catalogue, numberOf(number), frame);
  return detail === null ? null : { detail, frame, theirs: frameIn(detail.entry.document.lang, frame) };
}

/** The same order with the piece's name in its buyer's language. */
export function inTheirs({ detail, theirs }: Sheet, catalogue: Catalogue): OrderDetail {
  return { ...detail, pieceName: orderedName(catalogue, detail.entry.document, theirs.lang) };
}
