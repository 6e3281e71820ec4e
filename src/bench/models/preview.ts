/** A page of the shop as it will be once what lies in the files is published. */
import { randomUUID } from 'node:crypto';
import { kinOf } from '#catalogue/facts/related.ts';
import type { Reading } from '#catalogue/load/readCatalogue.ts';
import type { Catalogue, Piece, Shop } from '#catalogue/model/catalogue.ts';
import { asPromised, type Promised } from '#catalogue/model/shelf.ts';
import type { Problem } from '#catalogue/read/problem.ts';
import { frameOf, type Frame } from '#ui/models/frameOf.ts';
import type { Lang } from '#words/lang.ts';

/** Where a preview's orders go: nowhere, and their sender is told so. */
const ORDERS_PATH = '/bench/preview/orders/';

export type PiecePreview = { readonly piece: Piece; readonly kin: readonly Piece[]; readonly frame: Frame };

/** `none`: there is no such piece. `problems`: what keeps it from being shown. */
export type PreviewResult =
  | { readonly kind: 'page'; readonly page: PiecePreview }
  | { readonly kind: 'problems'; readonly problems: readonly Problem[] }
  | { readonly kind: 'none' };

const marks = new WeakMap<Reading, string>();

/** Another one whenever a file of the content has changed. */
export function readingMark(reading: Reading): string {
  const mark = marks.get(reading) ?? randomUUID();
  marks.set(reading, mark);
  return mark;
}

/** Its orders must not come into the book: a piece that isn't published can't be checked there. */
const withoutDesk = (shop: Shop): Shop => ({
  ...shop,
  orders: { ...shop.orders, form: null, desk: shop.orders.desk && ORDERS_PATH },
});

function pageOf(catalogue: Catalogue, piece: Piece, lang: Lang, promised: readonly Promised[]): PiecePreview {
  const pieces = catalogue.pieces.map((one) => asPromised(one, promised));
  const shown = pieces.find(({ id }) => id === piece.id) ?? piece;
  const guides = catalogue.guides.filter((guide) => guide.lang === lang);
  return {
    piece: shown,
    kin: kinOf(pieces)(shown),
    frame: frameOf({ shop: withoutDesk(catalogue.shop), guides }, lang),
  };
}

/**
 * @param reading of the files as they lie there now
 * @param file of the piece within the content folder; null where there is none
 * @param promised pieces that lay finished and are promised to somebody
 */
export function previewPiece(
  { catalogue, problems }: Reading,
  { id, file, lang }: { readonly id: string; readonly file: string | null; readonly lang: Lang },
  promised: readonly Promised[],
): PreviewResult {
  const piece = catalogue?.pieces.find((one) => one.id === id);
  if (catalogue !== null && piece !== undefined) {
    return { kind: 'page', page: pageOf(catalogue, piece, lang, promised) };
  }
  if (file === null) return { kind: 'none' };
  // A piece that is whole itself is kept back by what it is made of.
  const own = problems.filter((problem) => problem.file === file);
  return { kind: 'problems', problems: own.length > 0 ? own : problems };
}
