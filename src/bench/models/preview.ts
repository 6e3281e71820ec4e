/** A page of the shop as it will be once what lies in the files is published. */
import { randomUUID } from 'node:crypto';
import { kinOf } from '#catalogue/facts/related.ts';
import type { Reading } from '#catalogue/load/readCatalogue.ts';
import type { Catalogue, Guide, Piece, Shop } from '#catalogue/model/catalogue.ts';
import { asPromised, type Promised } from '#catalogue/model/shelf.ts';
import type { Problem } from '#catalogue/read/problem.ts';
import { frameOf, type Frame } from '#ui/models/frameOf.ts';
import type { Lang } from '#words/lang.ts';

/** Where a preview's orders go: nowhere, and their sender is told so. */
const ORDERS_PATH = '/bench/preview/orders/';

/** What a page of the shop is made of. */
export type Shown = { readonly frame: Frame; readonly pieces: readonly Piece[] };

export type PiecePreview = { readonly piece: Piece; readonly kin: readonly Piece[]; readonly frame: Frame };
export type GuidePreview = { readonly guide: Guide; readonly frame: Frame };

/** `none`: there is nothing of that name. `problems`: what keeps it from being shown. */
export type PreviewResult<Page> =
  | { readonly kind: 'page'; readonly page: Page }
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

/** The catalogue as it would stand in the shop, in one language. */
function shownIn(catalogue: Catalogue, lang: Lang, promised: readonly Promised[]): Shown {
  const guides = catalogue.guides.filter((guide) => guide.lang === lang);
  return {
    frame: frameOf({ shop: withoutDesk(catalogue.shop), guides }, lang),
    pieces: catalogue.pieces.map((one) => asPromised(one, promised)),
  };
}

/** What stands in the way of a page that isn't there: of its own file, or of what it is made of. */
function kept(problems: readonly Problem[], file: string | null): PreviewResult<never> {
  if (file === null) return { kind: 'none' };
  const own = problems.filter((problem) => problem.file === file);
  return { kind: 'problems', problems: own.length > 0 ? own : problems };
}

type Asked = {
  readonly id: string;
  readonly lang: Lang;
  /** Within the content folder; null where there is none. */ readonly file: string | null;
};

/**
 * @param reading of the files as they lie there now, or with a draft among them
 * @param promised pieces that lay finished and are promised to somebody
 */
export function previewPiece(
  { catalogue, problems }: Reading,
  { id, file, lang }: Asked,
  promised: readonly Promised[],
): PreviewResult<PiecePreview> {
  if (catalogue === null) return kept(problems, file);
  const { frame, pieces } = shownIn(catalogue, lang, promised);
  const piece = pieces.find((one) => one.id === id);
  if (piece === undefined) return kept(problems, file);
  return { kind: 'page', page: { piece, kin: kinOf(pieces)(piece), frame } };
}

/** The same of a guide. */
export function previewGuide(
  { catalogue, problems }: Reading,
  { id, file, lang }: Asked,
): PreviewResult<GuidePreview> {
  const guide = catalogue?.guides.find((one) => one.id === id && one.lang === lang);
  // A guide may hold what it must not and be read all the same.
  const own = problems.some((problem) => problem.file === file);
  if (catalogue === null || guide === undefined || own) return kept(problems, file);
  return { kind: 'page', page: { guide, frame: shownIn(catalogue, lang, []).frame } };
}

/** The same of the front page, which is there as soon as the shop can be read. */
export function previewFront(
  { catalogue, problems }: Reading,
  lang: Lang,
  promised: readonly Promised[],
): PreviewResult<Shown> {
  if (catalogue === null) return { kind: 'problems', problems };
  return { kind: 'page', page: shownIn(catalogue, lang, promised) };
}
