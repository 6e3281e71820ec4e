/** One order as its page shows it: as the buyer saw it, as it stood then, as it stands now. */
import { INSTEAD_PARTS } from '#core/design/choice.ts';
import { componentNameIn, inLang, partNamesIn, textsOf, type Catalogue } from '#catalogue/model/catalogue.ts';
import type { OrderDocument } from '#order/document.ts';
import { addressLines } from '#words/address.ts';
import type { DeliveryFacts } from '#words/benchCodes.ts';
import type { Difference } from '#words/difference.ts';
import { formatDate, formatMoney } from '#words/format.ts';
import { strandLengths } from '#words/strandLengths.ts';
import { orderWords } from '#words/words.ts';
import { findEntry, history, type Entry, type Event } from '../book/entry.ts';
import { invoicesOf, type Invoice } from '../book/invoices.ts';
import { unkept } from '../book/keptDigest.ts';
import type { Book } from '../book/open.ts';
import { timeAtBoard, type DayTime } from '../book/place.ts';
import { paymentsOf } from '../book/payments.ts';
import { parcelsOf, type Parcel } from '../book/parcels.ts';
import { findSnapshot, type Snapshot } from '../book/snapshot.ts';
import type { ReadyStanding } from '../book/ready.ts';
import { agreedCopy } from '../check/agreedCopy.ts';
import { pieceNow } from '../check/pieceNow.ts';
import { readyDifferences, standingOf } from '../check/ready.ts';
import type { There } from '../check/there.ts';
import { lengthsOf } from '../check/lengths.ts';
import { recheck, type Recheck } from '../check/recheck.ts';
import { draftsFor, parcelFacts, paymentLink, type Draft } from '../letters/letters.ts';
import type { Frame } from './frame.ts';
import { frameIn } from './frame.ts';
import { stockNow } from '../stock/stockNow.ts';
import { moneyOf, type Money } from './money.ts';
import { nextStep, type NextStep } from './nextStep.ts';

/** One way of computing the order again, and the copy of the piece it goes by. */
export type CheckedCopy = { readonly copy: Snapshot; readonly checked: Recheck };

export type OrderDetail = {
  readonly entry: Entry;
  /** State, days, money, papers or notes aren't what she entered. */
  readonly altered: boolean;
  readonly events: readonly Event[];
  /** Days on which her clock ran at the board. */
  readonly boardTime: readonly DayTime[];
  readonly pieceName: string;
  /** How it stands with the one that lies finished; null where hers is strung for her. */
  readonly standing: ReadyStanding | null;
  /** Null where the catalogue has the piece no more, and so no picture of it. */
  readonly pictured: string | null;
  /** Names that the shop has today for components, by id, and wires, by `wireKey`, in the reader's language. */
  readonly partNames: Readonly<Record<string, string>>;
  /** By the piece as it stands now; `copy` null where there is no such piece. */
  readonly now: { readonly copy: Snapshot | null; readonly checked: Recheck };
  /** By the piece as it stood when the order came in; null where that is not known. */
  readonly then: CheckedCopy | null;
  /** By the piece as it was agreed on; null where it stands now as it did then, or nothing is agreed. */
  readonly agreed: CheckedCopy | null;
  readonly money: Money;
  readonly parcels: readonly Parcel[];
  readonly invoices: readonly Invoice[];
  readonly next: NextStep | null;
  readonly drafts: readonly Draft[];
  /** Payment address for what is open; null where nothing is. */
  readonly payment: string | null;
};

/** Gathers an order; null where the book has none with that number. Throws BookError. */
export function orderDetail(
  book: Book,
  catalogue: Catalogue,
  number: string,
  frame: Frame,
): OrderDetail | null {
  const entry = findEntry(book, number);
  if (entry === null) return null;
  const { document, receivedAt, snapshotId, way } = entry;
  const plain = pieceNow(catalogue, document.piece.id);
  const shelf = catalogue.pieces.find(({ id }) => id === document.piece.id);
  const standing = standingOf(book, document, receivedAt, shelf);
  const there = stockNow(book, catalogue).thereFor(entry);
  const asMade = recheck(document, plain, receivedAt, way, there);
  const differences = [...readyDifferences(standing, entry.state), ...asMade.differences];
  const now = { copy: asMade.copy, checked: { ...asMade, differences } };
  const old = snapshotId === null ? null : findSnapshot(book, snapshotId);
  const then = old === null ? null : checkedBy(old, entry);
  const agreed = agreedCopy(book, entry, plain);
  const money = moneyOf(entry, now.checked, then?.checked ?? null, paymentsOf(book, number), catalogue.shop);
  const parcels = parcelsOf(book, number);
  const payment = paymentOf(catalogue, number, money);
  return {
    entry,
    altered: unkept(book, 'order', [number]).size > 0,
    events: history(book, number),
    boardTime: timeAtBoard(book, number),
    now,
    then,
    agreed: agreed === null ? null : checkedBy(agreed, entry, there),
    standing,
    pictured: plain === null ? null : document.piece.id,
    pieceName: nameOf(catalogue, document.piece.id, frame.lang),
    partNames: partNamesIn(catalogue, frame.lang),
    money,
    parcels,
    invoices: invoicesOf(book, number),
    next: nextStep(entry, now.checked, catalogue.shop),
    payment,
    drafts:
      entry.erasedAt === null
        ? draftsOf(catalogue, { entry, now, standing, money, parcels, payment }, frame)
        : [],
  };
}

function checkedBy(
  old: Snapshot,
  { document, receivedAt, way }: Entry,
  there: There | null = null,
): CheckedCopy {
  const checked = recheck(document, old, receivedAt, way, there);
  return { copy: checked.copy ?? old, checked };
}

/** What is ordered, in a language: the piece's name, with the parts chosen instead. */
export function orderedName(
  catalogue: Catalogue,
  { piece, instead }: OrderDocument,
  lang: Frame['lang'],
): string {
  const parts = INSTEAD_PARTS.map((part) => instead[part].id)
    .filter((id) => id !== '')
    .map((id) => componentNameIn(catalogue, id, lang));
  return orderWords(lang).withParts(nameOf(catalogue, piece.id, lang), parts);
}

/** The piece's name in a language; its id where the catalogue has it no more. */
export function nameOf(catalogue: Catalogue, id: string, lang: Frame['lang']): string {
  const piece = catalogue.pieces.find((one) => one.id === id);
  return piece === undefined ? id : textsOf(piece, lang).name;
}

/** Only while something is open, and never by the buyer's own figure. */
function paymentOf({ shop }: Catalogue, number: string, { basis, ledger, due, kept }: Money): string | null {
  if (basis === 'shown' || ledger.openMinor <= 0 || !kept) return null;
  return paymentLink(shop.orders.payment, number, ledger.openMinor, due.currency);
}

/** What a letter tells in words of its own. */
const OF_STANDING: readonly Difference['code'][] = ['ready-gone', 'asked-before'];

type LetterParts = Pick<OrderDetail, 'entry' | 'now' | 'standing' | 'money' | 'parcels' | 'payment'>;

/** Letters are in the buyer's language, in the shop's unit and money. */
function draftsOf(catalogue: Catalogue, detail: LetterParts, frame: Frame): Draft[] {
  const { shop } = catalogue;
  const { entry, now, standing, money, parcels, payment } = detail;
  const { document } = entry;
  const { checked } = now;
  const { price, due, ledger, kept } = money;
  const theirs = frameIn(document.lang, frame);
  const sum = (minor: number): string | null =>
    minor > 0 ? formatMoney(minor, due.currency, document.lang) : null;
  const parcel = parcels.at(-1);
  const collection = inLang(shop.post?.collection ?? null, document.lang);
  return draftsFor(document, {
    name: document.buyer.name,
    number: document.number,
    piece: orderedName(catalogue, document, document.lang),
    quantity: document.quantity,
    size: orderWords(document.lang).size(theirs.format, document),
    asItLies: document.made === 'ready',
    standing: standing?.is ?? null,
    lengths: strandLengths(theirs.format, lengthsOf(document, checked)),
    price: formatMoney(price.minor, price.currency, document.lang),
    withPostage: checked.postageMinor > 0,
    delivery: deliveryFacts(document, collection, theirs),
    collection,
    weeks: shop.orders.weeks,
    due: entry.dueOn === null ? null : formatDate(entry.dueOn, document.lang),
    paid: sum(ledger.paidMinor - ledger.refundedMinor),
    open: kept ? sum(ledger.openMinor) : null,
    payment,
    parcel: parcel === undefined ? null : parcelFacts(parcel, shop.orders.carriers),
    maker: shop.maker,
    shop: shop.name,
    differences: checked.differences
      .filter(({ code }) => !OF_STANDING.includes(code))
      .map((one) => theirs.words.difference(one, theirs.format)),
  });
}

function deliveryFacts(
  { delivery }: OrderDocument,
  collection: string | null,
  { format }: Frame,
): DeliveryFacts {
  if (delivery.by === 'post') {
    return { by: 'post', lines: addressLines(delivery.to, format.country(delivery.to.country)) };
  }
  return delivery.by === 'unsaid' ? delivery : { by: 'collection', where: collection };
}
