/** Changes to an order, each with its line of history. */
import { checkOrder } from '#order/check.ts';
import type { Delivery } from '#order/document.ts';
import { ORDER_STATES, type ChangeProblem, type OrderState, type StockHand } from '#words/benchCodes.ts';
import { isDay } from '#words/day.ts';
import { toEntry, type Entry, type Row, type Sum } from './entry.ts';
import type { InvoiceContent } from './invoiceContent.ts';
import { issueCreditNote, issueInvoice } from './invoices.ts';
import { keeping, vouch } from './keptDigest.ts';
import { inOneWrite, type Book } from './open.ts';
import { sendParcel, type EnteredParcel } from './parcels.ts';
import { moveForState, type Takes } from './orderStock.ts';
import { enter, strike, type Entered } from './payments.ts';
import { record } from './receive.ts';
import { keepSnapshot, type Snapshot } from './snapshot.ts';

/** `changed-meanwhile`: another window or bench was first; look again. */
export type ChangeOutcome = 'done' | 'no-such-order' | 'changed-meanwhile' | ChangeProblem;

export type Change =
  /**
   * `reason`: why, in her words; without one no order goes back. `parcel`: what it was sent in.
   * `stock`: what is taken out of the trays once it is strung, and at which machine she says so.
   * `piece`: as it stands now, by which it is agreed on; left out, it is as it stood when the order came in.
   */
  | {
      readonly kind: 'state';
      readonly state: OrderState;
      readonly piece?: Snapshot | null;
      readonly stock?: { readonly takes: Takes | null; readonly who: StockHand };
      readonly reason?: string;
      readonly parcel?: EnteredParcel;
    }
  /** Day, `2026-12-20`; null takes it away. */
  | { readonly kind: 'due'; readonly on: string | null }
  | { readonly kind: 'note'; readonly text: string }
  /** A prepared message was opened; its name. */
  | { readonly kind: 'message'; readonly message: string }
  /** `really`: more came in than was open, and she says that it did. */
  | { readonly kind: 'payment'; readonly entered: Entered; readonly really: boolean }
  /** The payment with this id was entered by mistake. */
  | { readonly kind: 'strike'; readonly id: number; readonly reason: string }
  /** `prefix`: of its number. */
  | { readonly kind: 'invoice'; readonly prefix: string; readonly content: InvoiceContent }
  /** Takes the invoice of that number back. */
  | {
      readonly kind: 'credit-note';
      readonly prefix: string;
      readonly corrects: string;
      readonly reason: string;
    }
  /** She has looked it over, and it is right as it stands, whatever its digest says. */
  | { readonly kind: 'looked-over' }
  /** Where it goes, by what the buyer wrote later. */
  | { readonly kind: 'address'; readonly delivery: Delivery }
  /** One more parcel, or its number, which came later. */
  | { readonly kind: 'parcel'; readonly parcel: EnteredParcel };

/** Longest note of the maker's own. */
export const NOTE_CAP = 4000;

/**
 * Changes one order.
 * @param version the order's version that the maker was looking at
 * @param figure what the order comes to by the maker's own figures today; what was agreed on comes before it
 * @throws BookError where it can't be written; RangeError for a state, day or note that no form sends
 */
export function change(
  book: Book,
  number: string,
  version: number,
  at: string,
  wanted: Change,
  figure: Sum | null = null,
): ChangeOutcome {
  check(wanted);
  return inOneWrite(book, () => {
    const row = book.db.prepare('SELECT * FROM orders WHERE number = ?').get(number);
    if (row === undefined) return 'no-such-order';
    const entry = toEntry(row as Row);
    if (entry.version !== version) return 'changed-meanwhile';
    return keeping(book, 'order', number, () => {
      const problem = apply(book, entry, at, wanted, figure);
      if (problem !== null) return problem;
      book.db.prepare('UPDATE orders SET version = version + 1 WHERE number = ?').run(number);
      if (wanted.kind === 'looked-over') vouch(book, 'order', number);
      return 'done';
    });
  });
}

/** What an order comes to: nothing once cancelled, what was agreed on, else the figure of today; null where there is none. */
export function dueOf({ state, agreed }: Entry, figure: Sum | null): Sum | null {
  const due = agreed ?? figure;
  return due !== null && state === 'cancelled' ? { ...due, minor: 0 } : due;
}

/** True where an order would go back, against the order of states: that wants a reason. */
export function goesBack(from: OrderState, to: OrderState): boolean {
  return ORDER_STATES.indexOf(to) < ORDER_STATES.indexOf(from);
}

/** Call inside a write. Nothing is written where it returns a problem. */
function apply(
  book: Book,
  entry: Entry,
  at: string,
  wanted: Change,
  figure: Sum | null,
): ChangeProblem | null {
  const { number } = entry.document;
  switch (wanted.kind) {
    case 'state':
      return setState(book, entry, at, wanted, figure);
    case 'due':
      book.db.prepare('UPDATE orders SET due_on = ? WHERE number = ?').run(wanted.on, number);
      record(book, number, at, { kind: 'due', text: wanted.on ?? '' });
      return null;
    case 'note':
      record(book, number, at, { kind: 'note', text: wanted.text });
      return null;
    case 'message':
      record(book, number, at, { kind: 'message', text: wanted.message });
      return null;
    case 'payment': {
      const due = dueOf(entry, figure) ?? { minor: 0, currency: wanted.entered.currency };
      return enter(book, number, at, due, wanted.entered, wanted.really);
    }
    case 'looked-over':
      record(book, number, at, { kind: 'looked-over', text: '' });
      return null;
    case 'address':
      return setDelivery(book, entry, at, wanted.delivery);
    case 'parcel':
      sendParcel(book, number, at, wanted.parcel);
      return null;
    case 'invoice':
      return invoice(book, entry, at, wanted, figure);
    case 'credit-note':
      return issueCreditNote(book, number, at, wanted.prefix, wanted.corrects, wanted.reason);
    case 'strike': {
      if (wanted.reason === '') return { code: 'reason-missing' };
      const problem = strike(book, number, at, wanted.id);
      if (problem === null) record(book, number, at, { kind: 'reason', text: wanted.reason });
      return problem;
    }
  }
}

/** The document stays as it came; an address that no document may hold is refused. */
function setDelivery(book: Book, entry: Entry, at: string, delivery: Delivery): ChangeProblem | null {
  const { document, erasedAt } = entry;
  if (erasedAt !== null) return { code: 'buyer-erased' };
  const wrong = checkOrder({ ...document, delivery });
  if (wrong?.startsWith('delivery') === true) return { code: 'address-incomplete' };
  book.db
    .prepare('UPDATE orders SET delivery = ? WHERE number = ?')
    .run(JSON.stringify(delivery), document.number);
  record(book, document.number, at, { kind: 'address', text: '' });
  return null;
}

/** States in which nothing is agreed on yet. */
const BEFORE_AGREEMENT: readonly OrderState[] = ['new', 'asked'];

/** What is invoiced is agreed on, also in orders of before the book kept money. */
function invoice(
  book: Book,
  entry: Entry,
  at: string,
  { prefix, content }: Change & { readonly kind: 'invoice' },
  figure: Sum | null,
): ChangeProblem | null {
  const { number } = entry.document;
  if (entry.erasedAt !== null) return { code: 'buyer-erased' };
  if (BEFORE_AGREEMENT.includes(entry.state) || entry.state === 'cancelled') return { code: 'not-agreed' };
  const problem = issueInvoice(book, number, at, prefix, content);
  if (problem === null && entry.agreed === null) keepAgreed(book, number, figure);
  return problem;
}

function keepAgreed(book: Book, number: string, agreed: Sum | null): void {
  book.db
    .prepare('UPDATE orders SET agreed_minor = ?, agreed_currency = ? WHERE number = ?')
    .run(agreed?.minor ?? null, agreed?.currency ?? null, number);
}

/** The piece that is agreed on stays with the sum, from the same moment on. */
function keepPiece(
  book: Book,
  { agreed: before, agreedSnapshotId, snapshotId, document }: Entry,
  at: string,
  agreed: Sum | null,
  piece: Snapshot | null,
): void {
  const first = piece === null ? snapshotId : keepSnapshot(book, piece, at);
  const kept = agreed === null ? null : before === null ? first : agreedSnapshotId;
  book.db.prepare('UPDATE orders SET agreed_snapshot = ? WHERE number = ?').run(kept, document.number);
}

/** From agreement on the order's sum stands, whatever the piece's price becomes; going back before it frees it. */
function setState(
  book: Book,
  entry: Entry,
  at: string,
  { state, reason = '', parcel, stock, piece = null }: Change & { readonly kind: 'state' },
  figure: Sum | null,
): ChangeProblem | null {
  const { number } = entry.document;
  if (reason === '' && goesBack(entry.state, state)) return { code: 'reason-missing' };
  const agreed = BEFORE_AGREEMENT.includes(state)
    ? null
    : (entry.agreed ?? (state === 'cancelled' ? null : figure));
  const moment = { at, who: stock?.who ?? 'machine' };
  moveForState(book, moment, number, entry.state, state, stock?.takes ?? null);
  book.db.prepare('UPDATE orders SET state = ? WHERE number = ?').run(state, number);
  keepAgreed(book, number, agreed);
  keepPiece(book, entry, at, agreed, piece);
  record(book, number, at, { kind: 'state', text: state });
  if (reason !== '') record(book, number, at, { kind: 'reason', text: reason });
  if (parcel !== undefined) sendParcel(book, number, at, parcel);
  return null;
}

function check(wanted: Change): void {
  if (wanted.kind === 'state' && !ORDER_STATES.includes(wanted.state)) throw new RangeError(wanted.state);
  if (wanted.kind === 'due' && wanted.on !== null && !isDay(wanted.on)) throw new RangeError(wanted.on);
  if (wanted.kind === 'payment' && !isDay(wanted.entered.day)) throw new RangeError(wanted.entered.day);
  if (wanted.kind === 'parcel' && !isDay(wanted.parcel.sentOn)) throw new RangeError(wanted.parcel.sentOn);
  if (wanted.kind === 'note' && wanted.text === '') throw new RangeError('note');
  const text = 'text' in wanted ? wanted.text : 'reason' in wanted ? wanted.reason : '';
  if (text.length > NOTE_CAP) throw new RangeError('note');
}
