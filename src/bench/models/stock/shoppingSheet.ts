/** The shopping list's page: for which orders, which marks, and what else she wants to make. */
import { textsOf, type Catalogue, type Piece } from '#catalogue/model/catalogue.ts';
import { MEASURES_OF_KIND } from '#core/design/choice.ts';
import type { Candidate } from '#core/sizing/sizing.ts';
import { usual } from '#core/sizing/usual.ts';
import { parseLength } from '#core/units/length.ts';
import type { StockProblem } from '#words/stockCodes.ts';
import type { Book } from '../../book/open.ts';
import type { Takes } from '../../book/orderStock.ts';
import { snapshotOf } from '../../check/pieceNow.ts';
import { UNCOUNTED, withStock } from '../../check/there.ts';
import { describedOf, sizingOf } from '../../check/sizedBefore.ts';
import { shoppingOf, type NeedFor, type Shopping } from '../../stock/shopping.ts';
import { amountsOf, type StockNow } from '../../stock/stockNow.ts';
import { takesOf, takesOfPiece } from '../../stock/takes.ts';
import type { Thing } from '../../stock/things.ts';
import type { Frame } from '../frame.ts';
import { openWorks } from '../work.ts';

/** Something that she wants to make besides, as she wrote it. */
export type MakeRow = {
  readonly piece: string;
  /** Empty for the size it is listed in. */
  readonly size: string;
  readonly many: string;
  /** Why nothing is reckoned for it; null where it is, or the row is empty. */
  readonly problem: 'no-piece' | 'size' | 'many' | 'cannot-be-made' | null;
};

export type ShoppingAttempt = { readonly form: URLSearchParams; readonly problem: StockProblem };

export type ShoppingSheet = {
  readonly of: 'open' | 'agreed';
  readonly marks: boolean;
  /** Filled ones, then one that is empty. */
  readonly makes: readonly MakeRow[];
  readonly pieces: readonly { readonly id: string; readonly name: string }[];
  readonly shopping: Shopping;
  /** Orders that nothing can be strung for as they are. */
  readonly leftOut: readonly string[];
  readonly attempt: ShoppingAttempt | null;
  readonly done: boolean;
  readonly query: string;
};

const MOST_MAKES = 10;
const MOST_PIECES = 999;

function makesIn(query: URLSearchParams): Omit<MakeRow, 'problem'>[] {
  const all = (name: string): string[] => query.getAll(name).map((one) => one.slice(0, 48).trim());
  const [pieces, sizes, many] = [all('piece'), all('size'), all('many')];
  return pieces
    .map((piece, at) => ({ piece, size: sizes[at] ?? '', many: many[at] ?? '' }))
    .filter(({ piece }) => piece !== '')
    .slice(0, MOST_MAKES);
}

/** Sized as if there were enough of everything, for what lacks is what is asked. */
function candidateOf(piece: Piece, size: string, { shop }: Frame): Candidate | 'size' | 'cannot-be-made' {
  const copy = withStock(snapshotOf(piece, shop), UNCOUNTED);
  if (size === '') return describedOf(copy, usual(copy.design));
  const read = parseLength(size, shop.unit);
  if (!read.ok) return 'size';
  const [of] = MEASURES_OF_KIND[piece.design.kind];
  const sizing = sizingOf(copy, {
    ...{ measure: { of, mm: read.mm }, sit: 'easy', hand: 'right', pick: 'best', quantity: 1 },
  });
  return sizing.status === 'fits' || sizing.status === 'near' ? sizing.chosen : 'cannot-be-made';
}

type Made = { readonly row: MakeRow; readonly takes: Takes | null };

function madeOf(make: Omit<MakeRow, 'problem'>, catalogue: Catalogue, frame: Frame): Made {
  const refused = (problem: MakeRow['problem']): Made => ({ row: { ...make, problem }, takes: null });
  const piece = catalogue.pieces.find(({ id }) => id === make.piece);
  if (piece === undefined) return refused('no-piece');
  const many = make.many === '' ? 1 : Number(make.many);
  if (!Number.isInteger(many) || many < 1 || many > MOST_PIECES) return refused('many');
  const candidate = candidateOf(piece, make.size, frame);
  if (typeof candidate === 'string') return refused(candidate);
  const copy = snapshotOf(piece, frame.shop);
  const takes = takesOfPiece(copy, candidate, many, frame.shop.stock.offcutMm);
  return { row: { ...make, problem: null }, takes };
}

/**
 * @param catalogue as it is published
 * @param things as the files say now
 * @throws BookError
 */
export function shoppingSheet(
  place: {
    readonly book: Book;
    readonly catalogue: Catalogue;
    readonly things: readonly Thing[];
    readonly stock: StockNow;
    readonly frame: Frame;
  },
  query: URLSearchParams,
  attempt: ShoppingAttempt | null,
): ShoppingSheet {
  const { book, catalogue, things, stock, frame } = place;
  const of = query.get('of') === 'agreed' ? 'agreed' : 'open';
  // A form that was sent without its tick says no; a page that was just opened says nothing.
  const marks = !query.has('of') || query.get('marks') === 'yes';
  const needs = new Map<string, NeedFor[]>();
  const add = (why: Pick<NeedFor, 'of' | 'id'>, takes: Takes): void => {
    for (const [key, amount] of amountsOf(takes)) {
      if (amount > 0) needs.set(key, [...(needs.get(key) ?? []), { ...why, amount }]);
    }
  };
  const { works, leftOut } = openWorks(book, catalogue, stock);
  for (const work of works) {
    if (of === 'agreed' && work.entry.state !== 'agreed') continue;
    const { number } = work.entry.document;
    add({ of: 'order', id: number }, takesOf(work, frame.shop.stock.offcutMm));
  }
  const makes = makesIn(query).map((make) => madeOf(make, catalogue, frame));
  for (const { row, takes } of makes) if (takes !== null) add({ of: 'piece', id: row.piece }, takes);
  const shared = new URLSearchParams(query);
  shared.delete('done');
  return {
    ...{ of, marks, leftOut, attempt },
    makes: [...makes.map(({ row }) => row), { piece: '', size: '', many: '', problem: null }],
    pieces: catalogue.pieces
      .map((piece) => ({ id: piece.id, name: textsOf(piece, frame.lang).name }))
      .toSorted((a, b) => a.name.localeCompare(b.name, frame.lang)),
    shopping: shoppingOf(things, needs, stock, { marks, sparePercent: frame.shop.stock.sparePercent }),
    done: query.get('done') === 'yes' && attempt === null,
    query: shared.toString(),
  };
}
