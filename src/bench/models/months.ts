/** What came in, what was sent and what an hour of it earned, month by month: an estimate, no bookkeeping. */
import type { Catalogue } from '#catalogue/model/catalogue.ts';
import { priceOf } from '#core/sizing/price/price.ts';
import { earnedAt } from '#core/sizing/price/stack.ts';
import type { Book } from '../book/open.ts';
import { findSnapshot, type Snapshot } from '../book/snapshot.ts';
import { entriesOfYear, yearsOf, type YearEntry } from '../book/year.ts';
import { secondsAtBoard } from '../book/place.ts';
import { pieceNow } from '../check/pieceNow.ts';
import { orderedCopy } from '../check/ordered.ts';
import { asRestrung, isRestring } from '../check/restring.ts';
import { fitsDesign } from '../check/recheck.ts';

/** Figures of some orders; minor units of the shop's currency, postage not among them. */
export type Sum = {
  readonly orders: number;
  readonly pieces: number;
  readonly priceMinor: number;
  /** Price less material and packing as the maker pays for them, and fees. */
  readonly leftMinor: number;
  /** By the shop's rule. */
  readonly minutes: number;
  /** Orders that she let the clock at the board run for, how long it did, and what the rule says of these. */
  readonly timed: { readonly orders: number; readonly seconds: number; readonly ruleMinutes: number };
};

export type Month = {
  /** `2026-11`; the year for the sum of all. */
  readonly month: string;
  readonly received: Sum;
  readonly cancelled: number;
  readonly sent: Sum;
  /** What an hour of what was sent earned; null where nothing was. */
  readonly perHourMinor: number | null;
};

export type Months = {
  readonly year: string;
  /** Others that the book has something of. */
  readonly years: readonly string[];
  /** Newest first; only those in which something happened. */
  readonly months: readonly Month[];
  readonly all: Month;
  /** Numbers of orders whose piece isn't known any more: they are in no sum of money or time. */
  readonly unknown: readonly string[];
};

type Worth = Omit<Sum, 'orders' | 'timed'>;
type Known = YearEntry & { readonly worth: Worth; readonly boardSeconds: number };

/** The months of a year. Throws BookError. */
export function monthsOf(book: Book, catalogue: Catalogue, year: string): Months {
  const entries = entriesOfYear(book, year);
  const valued = entries.map((one) => ({
    ...one,
    worth: worthOf(book, catalogue, one),
    boardSeconds: secondsAtBoard(book, one.entry.document.number),
  }));
  const known = valued.filter((one): one is Known => one.worth !== null);
  const names = known.flatMap(({ receivedOn, sentOn }) => [
    receivedOn.slice(0, 7),
    sentOn?.slice(0, 7) ?? '',
  ]);
  const months = [...new Set(names)].filter((month) => month.startsWith(`${year}-`));
  return {
    year,
    years: yearsOf(book).filter((one) => one !== year),
    months: months
      .toSorted()
      .toReversed()
      .map((month) => monthOf(month, known)),
    all: monthOf(year, known),
    unknown: valued.filter(({ worth }) => worth === null).map(({ entry }) => entry.document.number),
  };
}

/** @param start of a day: its month, or its year */
function monthOf(start: string, known: readonly Known[]): Month {
  const received = known.filter(({ receivedOn }) => receivedOn.startsWith(start));
  const sent = sumOf(known.filter(({ sentOn }) => sentOn?.startsWith(start) === true));
  return {
    month: start,
    received: sumOf(received),
    cancelled: received.filter(({ entry }) => entry.state === 'cancelled').length,
    sent,
    perHourMinor: sent.minutes === 0 ? null : Math.round((60 * sent.leftMinor) / sent.minutes),
  };
}

function sumOf(all: readonly Known[]): Sum {
  const add = (of: (worth: Worth) => number): number => all.reduce((sum, { worth }) => sum + of(worth), 0);
  return {
    orders: all.length,
    pieces: add(({ pieces }) => pieces),
    priceMinor: add(({ priceMinor }) => priceMinor),
    leftMinor: add(({ leftMinor }) => leftMinor),
    minutes: add(({ minutes }) => minutes),
    timed: timedOf(all.filter(({ boardSeconds }) => boardSeconds > 0)),
  };
}

const timedOf = (timed: readonly Known[]): Sum['timed'] => ({
  orders: timed.length,
  seconds: timed.reduce((sum, { boardSeconds }) => sum + boardSeconds, 0),
  ruleMinutes: timed.reduce((sum, { worth }) => sum + worth.minutes, 0),
});

/** By the piece as it stood when the order came in, else as it stands now, with the counts that were ordered. */
function worthOf(book: Book, catalogue: Catalogue, { entry }: YearEntry): Worth | null {
  const { document, snapshotId } = entry;
  const then = snapshotId === null ? null : findSnapshot(book, snapshotId);
  return (
    [then, pieceNow(catalogue, document.piece.id)]
      .map((copy) => (copy === null ? null : worthBy(copy, entry, catalogue.shop.rules.currency)))
      .find((worth) => worth !== null) ?? null
  );
}

function worthBy(plain: Snapshot, { document, way }: YearEntry['entry'], currency: string): Worth | null {
  const ordered = orderedCopy(plain, document);
  if (ordered === null) return null;
  const copy = isRestring(document, way) ? asRestrung(ordered) : ordered;
  const { design, rules, listedMinor, listed } = copy;
  const { shown, quantity } = document;
  if (rules.currency !== currency || !fitsDesign(design, shown.counts)) return null;
  const priceMinor = priceOf(design, shown.counts, rules, listedMinor, listed);
  const { leftMinor, minutes } = earnedAt(design, shown.counts, rules, priceMinor);
  return {
    pieces: quantity,
    priceMinor: quantity * priceMinor,
    leftMinor: quantity * leftMinor,
    minutes: quantity * minutes,
  };
}
