/** What is walked through at the board: an order, a batch of orders of one piece, or a piece as its card shows it. */
import { partNamesIn, type Catalogue } from '#catalogue/model/catalogue.ts';
import { orderWords } from '#words/words.ts';
import type { Book } from '../../book/open.ts';
import { findPlace, secondsAtBoard, type Place } from '../../book/place.ts';
import { stockNow } from '../../stock/stockNow.ts';
import { benchCard, type PieceCard } from '../benchCard.ts';
import type { Frame } from '../frame.ts';
import { orderDetail, type OrderDetail } from '../orderDetail.ts';
import { pieceSheet } from '../pieceSheet.ts';
import { TO_STRING } from '../work.ts';
import { MOST_PIECES, subjectText, type Subject } from './subject.ts';
import { walkOf, type Walk } from './walk.ts';

/** One of the pieces that lie on the table. */
export type WalkPiece = {
  /** Which of the cards it goes by. */
  readonly card: number;
  /** Its order; null for a piece that nobody ordered. */
  readonly number: string | null;
  /** Which of several of one order, from 1; null where the order is for one. */
  readonly nth: { readonly nth: number; readonly of: number } | null;
};

export type WalkSheet = {
  readonly subject: Subject;
  readonly name: string;
  /** Each in a size of its own. */
  readonly cards: readonly PieceCard[];
  readonly pieces: readonly WalkPiece[];
  /** Of the orders; none for a piece that nobody ordered. */
  readonly details: readonly OrderDetail[];
  /** How each order, or the piece, was asked for. */
  readonly sizes: readonly string[];
  readonly partNames: Readonly<Record<string, string>>;
  readonly walk: Walk;
  /** Where she left off; null where she hasn't begun. */
  readonly kept: Place | null;
  /** By her clock, of all the orders together. */
  readonly seconds: number;
};

/** Why there is nothing to walk through. */
export type WalkProblem =
  | 'no-such-order'
  | 'no-such-piece'
  /** Nothing can be strung from one of them as it is. */
  | 'nothing-to-string'
  /** A batch is of one piece. */
  | 'other-piece'
  /** One of a batch is strung already, or cancelled. */
  | 'strung-already'
  | 'too-many-pieces';

export type WalkFound = { readonly sheet: WalkSheet } | { readonly problem: WalkProblem };

/** Gathers what there is to walk through. Throws BookError. */
export function walkSheet(book: Book, catalogue: Catalogue, subject: Subject, frame: Frame): WalkFound {
  const found =
    subject.kind === 'piece'
      ? ofPiece(book, catalogue, subject, frame)
      : ofOrders(book, catalogue, subject, frame);
  if ('problem' in found) return found;
  const { cards, pieces, details } = found;
  const walk = walkOf(pieces.flatMap(({ card }) => cards[card] ?? []));
  const kept = findPlace(book, subjectText(subject));
  const seconds = details.reduce((sum, { entry }) => sum + secondsAtBoard(book, entry.document.number), 0);
  return { sheet: { ...found, subject, walk, kept, seconds } };
}

type Gathered = Omit<WalkSheet, 'subject' | 'walk' | 'kept' | 'seconds'>;

function ofPiece(
  book: Book,
  catalogue: Catalogue,
  { id, query }: Subject & { readonly kind: 'piece' },
  frame: Frame,
): Gathered | { readonly problem: WalkProblem } {
  const there = stockNow(book, catalogue).thereFor(null);
  const sheet = pieceSheet(catalogue, id, new URLSearchParams(query), { frame, there, book });
  if (sheet === null) return { problem: 'no-such-piece' };
  if (sheet.card === null) return { problem: 'nothing-to-string' };
  return {
    name: sheet.card.copy.name,
    cards: [sheet.card],
    pieces: [{ card: 0, number: null, nth: null }],
    details: [],
    sizes: [sheet.asked.text === '' ? frame.words.pieces.listed : sheet.asked.text],
    partNames: sheet.partNames,
  };
}

function ofOrders(
  book: Book,
  catalogue: Catalogue,
  subject: Exclude<Subject, { readonly kind: 'piece' }>,
  frame: Frame,
): Gathered | { readonly problem: WalkProblem } {
  const numbers = subject.kind === 'order' ? [subject.number] : subject.numbers;
  const details: OrderDetail[] = [];
  const cards: PieceCard[] = [];
  const pieces: WalkPiece[] = [];
  for (const number of numbers) {
    const detail = orderDetail(book, catalogue, number, frame);
    if (detail === null) return { problem: 'no-such-order' };
    const { document, state } = detail.entry;
    if (document.piece.id !== (details[0]?.entry.document.piece.id ?? document.piece.id))
      return { problem: 'other-piece' };
    if (subject.kind === 'batch' && !TO_STRING.includes(state)) return { problem: 'strung-already' };
    const card =
      document.made === 'ready' ? null : benchCard(detail, subject.kind === 'order' ? subject.by : null);
    if (card === null) return { problem: 'nothing-to-string' };
    for (let nth = 1; nth <= document.quantity; nth += 1) {
      const among = document.quantity === 1 ? null : { nth, of: document.quantity };
      pieces.push({ card: cards.length, number, nth: among });
    }
    details.push(detail);
    cards.push(card);
  }
  if (pieces.length > MOST_PIECES) {
    if (subject.kind === 'batch') return { problem: 'too-many-pieces' };
    // So many of one order are strung one after the other, each by the same steps.
    pieces.splice(1);
  }
  return {
    name: details[0]?.pieceName ?? '',
    cards,
    pieces,
    details,
    sizes: details.map(({ entry }) => orderWords(frame.lang).size(frame.format, entry.document)),
    partNames: partNamesIn(catalogue, frame.lang),
  };
}
