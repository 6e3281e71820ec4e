/**
 * Work laid into weeks. Every order is worked on in the order of due days, one
 * after another, so that a week never holds more minutes than it has and an
 * order may go on into the next one. No other order of work keeps more due days
 * ("earliest due date first": Jackson, 1955; from memory).
 */
import { addDays, daysLeft, mondayOf, weeksBetween } from './days.ts';

export type Job = {
  readonly number: string;
  /** What it takes by the shop's rule, all pieces together. */
  readonly minutes: number;
  /** Day; null for none, for which one is proposed. */
  readonly dueOn: string | null;
  readonly receivedOn: string;
};

export type Terms = {
  /** Day by the maker's clock. */
  readonly today: string;
  readonly hoursPerWeek: number;
  /** Weeks that she tells buyers: nothing is proposed for sooner than that after it came in. */
  readonly readyWeeks: number;
};

export type PlannedJob = Job & {
  /** Its own due day, or the one proposed. */
  readonly by: string;
  /** Monday of the week in which it is done. */
  readonly doneIn: string;
  /** Done after its due week, or its day is past. */
  readonly late: boolean;
};

export type PlannedWeek = {
  readonly monday: string;
  readonly hasMinutes: number;
  /** Work of this week, in its order. */
  readonly parts: readonly { readonly number: string; readonly minutes: number }[];
};

export type Plan = {
  /** In the order of work. */
  readonly jobs: readonly PlannedJob[];
  /** From this week on, without a gap; none where there is no work. */
  readonly weeks: readonly PlannedWeek[];
};

/** Sums of minutes are exact to this. */
const NOISE = 1e-6;

/** Lays the jobs into weeks. A job without a due day gets the first week that has room for it. */
export function plan(jobs: readonly Job[], terms: Terms): Plan {
  const dated = withDays(jobs, terms).toSorted(
    (a, b) => compare(a.by, b.by) || compare(a.receivedOn, b.receivedOn) || compare(a.number, b.number),
  );
  const weeks: { monday: string; hasMinutes: number; left: number; parts: Part[] }[] = [];
  const openWeek = (): (typeof weeks)[number] => {
    const hasMinutes = minutesThrough(weeks.length, terms) - minutesThrough(weeks.length - 1, terms);
    const monday = addDays(mondayOf(terms.today), 7 * weeks.length);
    const week = { monday, hasMinutes, left: hasMinutes, parts: [] };
    weeks.push(week);
    return week;
  };
  const planned = dated.map((job): PlannedJob => {
    let rest = job.minutes;
    let week = weeks.at(-1) ?? openWeek();
    for (;;) {
      if (week.left <= NOISE) week = openWeek();
      const minutes = Math.min(rest, week.left);
      week.parts.push({ number: job.number, minutes });
      week.left -= minutes;
      rest -= minutes;
      if (rest <= NOISE) break;
    }
    return { ...job, doneIn: week.monday, late: job.by < terms.today || mondayOf(job.by) < week.monday };
  });
  return {
    jobs: planned,
    weeks: weeks.map(({ monday, hasMinutes, parts }) => ({ monday, hasMinutes, parts })),
  };
}

type Part = { readonly number: string; readonly minutes: number };

/** Minutes from today to the end of the week `week` weeks on; of this week, its share of days left. */
export function minutesThrough(week: number, { today, hoursPerWeek }: Terms): number {
  return week < 0 ? 0 : 60 * hoursPerWeek * (daysLeft(today) / 7 + week);
}

function withDays(jobs: readonly Job[], terms: Terms): (Job & { readonly by: string })[] {
  const dated = jobs.flatMap((job) => (job.dueOn === null ? [] : [{ ...job, by: job.dueOn }]));
  const undated = jobs
    .filter(({ dueOn }) => dueOn === null)
    .toSorted((a, b) => compare(a.receivedOn, b.receivedOn) || compare(a.number, b.number));
  // Each proposal is work that the next one has to leave room for.
  for (const job of undated) dated.push({ ...job, by: propose(job, dated, terms) });
  return dated;
}

/**
 * The first Friday (common practice, no source: posted before the week's end)
 * by which the job can be done without any of the `others` missing its week.
 */
function propose(job: Job, others: readonly (Job & { readonly by: string })[], terms: Terms): string {
  const { today, readyWeeks } = terms;
  const promised = addDays(job.receivedOn, Math.ceil(7 * readyWeeks));
  const earliest = promised < today ? today : promised;
  const weekOf = (day: string): number => Math.max(0, weeksBetween(today, day));
  const dueWeeks = others.map(({ by, minutes }) => ({ week: weekOf(by), minutes }));
  /** Minutes not yet spoken for up to the end of a week. */
  const slack = (week: number): number =>
    dueWeeks.reduce(
      (left, one) => (one.week <= week ? left - one.minutes : left),
      minutesThrough(week, terms),
    );
  const full = dueWeeks.map(({ week }) => week).filter((week) => slack(week) < job.minutes - NOISE);
  let week = Math.max(weekOf(earliest), ...full.map((one) => one + 1));
  while (slack(week) < job.minutes - NOISE) week += 1;
  const friday = addDays(mondayOf(today), 7 * week + 4);
  return friday < earliest ? earliest : friday;
}

function compare(one: string, other: string): number {
  return one < other ? -1 : Number(one > other);
}
