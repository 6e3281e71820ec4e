/** What is due when, what it takes against the hours there are, and what can't be begun for want of beads. */
import { dayOf } from '#words/day.ts';
import { componentNameIn, type Catalogue } from '#catalogue/model/catalogue.ts';
import type { Entry } from '../book/entry.ts';
import type { Book } from '../book/open.ts';
import { entriesIn } from '../book/search.ts';
import type { Frame } from './frame.ts';
import { orderedName } from './orderDetail.ts';
import { plan, type Job, type PlannedJob, type Terms } from './plan/plan.ts';
import { handOut, type Shortage } from './plan/stock.ts';
import { stockNow, type StockNow } from '../stock/stockNow.ts';
import { partsOf, type Work } from '../stock/takes.ts';
import { minutesOfWork, openWorks, TO_STRING } from './work.ts';

export type NamedShortage = Shortage & { readonly name: string };

export type WeekOrder = {
  readonly entry: Entry;
  readonly pieceName: string;
  /** All pieces together, by the shop's rule. */
  readonly minutes: number;
  /** Due day to be taken over; null where it has one, or no hours are given to plan by. */
  readonly proposed: string | null;
  readonly late: boolean;
  /** What it lacks when its turn comes. */
  readonly short: readonly NamedShortage[];
};

export type WeekRow = {
  readonly monday: string;
  readonly hasMinutes: number;
  readonly takesMinutes: number;
  /** `minutes`: as many of the order's as fall into this week. */
  readonly parts: readonly { readonly order: WeekOrder; readonly minutes: number }[];
};

export type WeekPlan = {
  /** null where the shop gives none: there is a list then, and no weeks. */
  readonly hoursPerWeek: number | null;
  readonly totalMinutes: number;
  /** In the order of work: by due day, own or proposed. */
  readonly orders: readonly WeekOrder[];
  readonly weeks: readonly WeekRow[];
  /** Strung, and still to be sent. */
  readonly toSend: readonly { readonly entry: Entry; readonly pieceName: string }[];
  /** Numbers of orders that can't be strung as they are. */
  readonly leftOut: readonly string[];
};

/** The plan of all open orders as of today. Throws BookError. */
export function weekPlan(book: Book, catalogue: Catalogue, frame: Frame): WeekPlan {
  const stock = stockNow(book, catalogue);
  const { works, leftOut } = openWorks(book, catalogue, stock);
  const { hoursPerWeek } = catalogue.shop.orders;
  const planned = plan(works.map(jobOf), termsOf(catalogue, frame));
  const orders = weekOrders(works, planned.jobs, stock, catalogue, frame);
  const byNumber = new Map(orders.map((order) => [order.entry.document.number, order]));
  const weeks = planned.weeks.map(({ monday, hasMinutes, parts }): WeekRow => {
    const known = parts.flatMap(({ number, minutes }) => {
      const order = byNumber.get(number);
      return order === undefined ? [] : [{ order, minutes }];
    });
    const takesMinutes = parts.reduce((sum, { minutes }) => sum + minutes, 0);
    return { monday, hasMinutes, takesMinutes, parts: known };
  });
  return {
    hoursPerWeek,
    totalMinutes: orders.reduce((sum, { minutes }) => sum + minutes, 0),
    orders,
    weeks: hoursPerWeek === null ? [] : weeks,
    toSend: entriesIn(book, ['agreed', 'strung'])
      .filter(isFinished)
      .map((entry) => ({
        entry,
        pieceName: orderedName(catalogue, entry.document, frame.lang),
      })),
    leftOut,
  };
}

/** Strung, or lying there from the start. */
const isFinished = ({ state, document }: Entry): boolean => state === 'strung' || document.made === 'ready';

/** The day that the plan proposes for one order; null where it has one, or nothing is planned. Throws BookError. */
export function proposedDue(book: Book, catalogue: Catalogue, frame: Frame, entry: Entry): string | null {
  const { dueOn, state, document } = entry;
  // Every open order is sized for it: only where there is something to propose.
  if (dueOn !== null || !TO_STRING.includes(state) || catalogue.shop.orders.hoursPerWeek === null)
    return null;
  const { works } = openWorks(book, catalogue, stockNow(book, catalogue));
  const { jobs } = plan(works.map(jobOf), termsOf(catalogue, frame));
  return jobs.find(({ number }) => number === document.number)?.by ?? null;
}

/** Without hours there is still an order of work; the figure then only has to be some. */
const ANY_HOURS = 10;

function termsOf({ shop }: Catalogue, { now }: Frame): Terms {
  const { hoursPerWeek, weeks } = shop.orders;
  return { today: dayOf(now), hoursPerWeek: hoursPerWeek ?? ANY_HOURS, readyWeeks: weeks };
}

function jobOf(work: Work): Job {
  const { document, dueOn, receivedAt } = work.entry;
  return {
    number: document.number,
    minutes: minutesOfWork(work),
    dueOn,
    receivedOn: dayOf(receivedAt),
  };
}

function weekOrders(
  works: readonly Work[],
  jobs: readonly PlannedJob[],
  stock: StockNow,
  catalogue: Catalogue,
  { lang, now }: Frame,
): WeekOrder[] {
  const byNumber = new Map(works.map((work) => [work.entry.document.number, work]));
  const ordered = jobs.flatMap((job) => {
    const work = byNumber.get(job.number);
    return work === undefined ? [] : [{ job, work }];
  });
  // What is agreed has its beads put by, whenever it is due; the others share what is left, in the order of work.
  const isAgreed = ({ work }: (typeof ordered)[number]): boolean => work.entry.state === 'agreed';
  const served = [...ordered.filter(isAgreed), ...ordered.filter((one) => !isAgreed(one))];
  const given = new Map(
    handOut(
      served.map(({ job, work }) => ({ number: job.number, parts: partsOf(work) })),
      stock.onHand,
    ).map((one) => [one.number, one.short]),
  );
  const planned = catalogue.shop.orders.hoursPerWeek !== null;
  return ordered.map(({ job, work: { entry } }): WeekOrder => {
    const short = (given.get(job.number) ?? []).map((one) => ({
      ...one,
      name: componentNameIn(catalogue, one.component, lang),
    }));
    return {
      entry,
      pieceName: orderedName(catalogue, entry.document, lang),
      minutes: job.minutes,
      proposed: planned && job.dueOn === null ? job.by : null,
      late: planned ? job.late : job.dueOn !== null && job.dueOn < dayOf(now),
      short,
    };
  });
}
