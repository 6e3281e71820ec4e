/** A piece of the catalogue, past ones too, as it is strung anew: as listed, or in another size. */
import { partNamesIn, type Catalogue, type Piece } from '#catalogue/model/catalogue.ts';
import { MEASURES_OF_KIND, type Hand, type Measure, type Sit } from '#core/design/choice.ts';
import { size } from '#core/sizing/size.ts';
import type { Sizing } from '#core/sizing/sizing.ts';
import { describe, usual } from '#core/sizing/usual.ts';
import { parseLength, type LengthProblem } from '#core/units/length.ts';
import type { Book } from '../book/open.ts';
import { orderedVersions, type OrderedVersion } from '../book/orderedVersions.ts';
import { findSnapshot, type Snapshot } from '../book/snapshot.ts';
import { snapshotOf } from '../check/pieceNow.ts';
import { withStock, type There } from '../check/there.ts';
import { pieceCard, type PieceCard } from './benchCard.ts';
import type { Frame } from './frame.ts';

export type SheetQuery = {
  readonly of: Measure['of'];
  /** As she wrote it; empty for the piece as it is listed. */
  readonly text: string;
  readonly sit: Sit;
  readonly hand: Hand;
};

/** The piece as it was ordered once, by its copy in the order book. */
export type ShownVersion = OrderedVersion & { readonly copy: Snapshot };

export type PieceSheet = {
  readonly piece: Pick<Snapshot, 'name' | 'design' | 'revision'> & { readonly id: string };
  /** False where the catalogue has it no more. */
  readonly isThere: boolean;
  /** Which of them is shown; null for the piece as it stands now. */
  readonly version: OrderedVersion | null;
  /** Others that were ordered. */
  readonly versions: readonly OrderedVersion[];
  readonly asked: SheetQuery;
  /** Measures that this kind of piece goes by. */
  readonly measures: readonly Measure['of'][];
  /** Why what she wrote is no length; null where it is, or nothing was written. */
  readonly unread: LengthProblem | null;
  /** null where the piece is shown as listed. */
  readonly sizing: Sizing | null;
  /** null where nothing can be strung. */
  readonly card: PieceCard | null;
  readonly partNames: Readonly<Record<string, string>>;
};

export type SheetPlace = { readonly frame: Frame; readonly there: There; readonly book: Book | null };

/** Reads what an address asks for; anything unknown is left at its usual. */
export function readQuery(query: URLSearchParams, { design }: Pick<Piece, 'design'>): SheetQuery {
  const one = <Value extends string>(name: string, all: readonly [Value, ...Value[]]): Value =>
    all.find((value) => value === query.get(name)) ?? all[0];
  return {
    of: one('of', MEASURES_OF_KIND[design.kind]),
    text: (query.get('size') ?? '').slice(0, 40).trim(),
    sit: one('sit', ['easy', 'snug', 'loose']),
    hand: one('hand', ['right', 'left']),
  };
}

/** One that was ordered and that an address asks for; null where there is none such. Throws BookError. */
export function versionIn(book: Book, id: string, query: URLSearchParams): ShownVersion | null {
  const asked = query.get('version') ?? '';
  const version = orderedVersions(book, id).find(({ snapshot }) => String(snapshot) === asked);
  const copy = version === undefined ? null : findSnapshot(book, version.snapshot);
  return version === undefined || copy === null ? null : { ...version, copy };
}

/**
 * The sheet of a piece as asked for: as it stands now, or as it was ordered
 * once, then by the rules of today, since she strings it today.
 * @param place `there`: what a piece that is begun now may take of each component; `book` null where it can't be opened, and nothing that was ordered is offered
 * @returns null where there is no such piece
 */
export function pieceSheet(
  catalogue: Catalogue,
  id: string,
  query: URLSearchParams,
  { frame, there, book }: SheetPlace,
): PieceSheet | null {
  const { lang, shop } = frame;
  const piece = catalogue.pieces.find((one) => one.id === id);
  const old = book === null ? null : versionIn(book, id, query);
  const copy = old === null ? piece && snapshotOf(piece, shop) : { ...old.copy, rules: shop.rules };
  if (copy === undefined) return null;
  const { design, listedMinor, name, revision } = copy;
  const asked = readQuery(query, { design });
  const versions = book === null ? [] : orderedVersions(book, id);
  const shared = {
    piece: { id, name, design, revision },
    isThere: piece !== undefined,
    version: old,
    versions: versions.filter((one) => one.revision !== revision && one.revision !== piece?.revision),
    asked,
    measures: MEASURES_OF_KIND[design.kind],
    partNames: partNamesIn(catalogue, lang),
  };
  if (asked.text === '') {
    const listed = describe(design, shop.rules, listedMinor, usual(design));
    return { ...shared, unread: null, sizing: null, card: pieceCard(copy, listed, asked.hand) };
  }
  const read = parseLength(asked.text, shop.unit);
  if (!read.ok) return { ...shared, unread: read.problem, sizing: null, card: null };
  const { sit, hand } = asked;
  const choice = { measure: { of: asked.of, mm: read.mm }, sit, hand, pick: 'best', quantity: 1 } as const;
  const sizing = size(withStock(copy, there).design, shop.rules, listedMinor, choice);
  const chosen = sizing.status === 'refused' || sizing.status === 'outside' ? null : sizing.chosen;
  return { ...shared, unread: null, sizing, card: chosen === null ? null : pieceCard(copy, chosen, hand) };
}
