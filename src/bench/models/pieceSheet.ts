/** A piece of the catalogue, past ones too, as it is strung anew: as listed, or in another size. */
import { partNamesIn, type Catalogue, type Piece } from '#catalogue/model/catalogue.ts';
import { MEASURES_OF_KIND, type Hand, type Measure, type Sit } from '#core/design/choice.ts';
import { size } from '#core/sizing/size.ts';
import type { Sizing } from '#core/sizing/sizing.ts';
import { describe, usual } from '#core/sizing/usual.ts';
import { parseLength, type LengthProblem } from '#core/units/length.ts';
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

export type PieceSheet = {
  readonly piece: Piece;
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

/** Reads what an address asks for; anything unknown is left at its usual. */
export function readQuery(query: URLSearchParams, { design }: Piece): SheetQuery {
  const one = <Value extends string>(name: string, all: readonly [Value, ...Value[]]): Value =>
    all.find((value) => value === query.get(name)) ?? all[0];
  return {
    of: one('of', MEASURES_OF_KIND[design.kind]),
    text: (query.get('size') ?? '').slice(0, 40).trim(),
    sit: one('sit', ['easy', 'snug', 'loose']),
    hand: one('hand', ['right', 'left']),
  };
}

/**
 * The sheet of a piece as asked for; null where the catalogue has no such piece.
 * @param there what a piece that is begun now may take of each component
 */
export function pieceSheet(
  catalogue: Catalogue,
  id: string | undefined,
  query: URLSearchParams,
  there: There,
  { lang, shop }: Frame,
): PieceSheet | null {
  const piece = catalogue.pieces.find((one) => one.id === id);
  if (piece === undefined) return null;
  const asked = readQuery(query, piece);
  const copy = snapshotOf(piece, shop);
  const { design, listedMinor } = piece;
  const shared = {
    piece,
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
