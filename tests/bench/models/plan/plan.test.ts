/** Work laid into weeks, against a hand that works through every minute and against its own promises. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays, daysLeft, mondayOf, weeksBetween } from '#bench/models/plan/days.ts';
import { minutesThrough, plan, type Job, type Terms } from '#bench/models/plan/plan.ts';

const TERMS: Terms = { today: '2026-11-30', hoursPerWeek: 10, readyWeeks: 2 };
const job = (number: string, minutes: number, dueOn: string | null, receivedOn = '2026-11-30'): Job => ({
  ...{ number, minutes, dueOn, receivedOn },
});

describe('days', () => {
  it('begin weeks on Monday, over months, years and leap days', () => {
    expect(mondayOf('2026-11-29')).toBe('2026-11-23');
    expect(mondayOf('2026-11-30')).toBe('2026-11-30');
    expect(mondayOf('2027-01-01')).toBe('2026-12-28');
    expect(addDays('2028-02-28', 2)).toBe('2028-03-01');
    expect(weeksBetween('2026-11-29', '2026-11-30')).toBe(1);
    expect(weeksBetween('2027-01-04', '2026-12-30')).toBe(-1);
    expect([daysLeft('2026-11-30'), daysLeft('2026-12-06')]).toEqual([7, 1]);
  });
});

describe('the plan', () => {
  it('works in the order of due days, and lets work go on into the next week', () => {
    const { jobs, weeks } = plan([job('b', 500, '2026-12-11'), job('a', 400, '2026-12-04')], TERMS);
    expect(jobs.map(({ number, doneIn, late }) => [number, doneIn, late])).toEqual([
      ['a', '2026-11-30', false],
      ['b', '2026-12-07', false],
    ]);
    expect(weeks.map(({ parts }) => parts)).toEqual([
      [
        { number: 'a', minutes: 400 },
        { number: 'b', minutes: 200 },
      ],
      [{ number: 'b', minutes: 300 }],
    ]);
  });

  it('counts only what is left of this week', () => {
    const sunday = { ...TERMS, today: '2026-12-06' };
    expect(plan([job('a', 90, '2026-12-20')], sunday).weeks).toEqual([
      { monday: '2026-11-30', hasMinutes: 600 / 7, parts: [{ number: 'a', minutes: 600 / 7 }] },
      { monday: '2026-12-07', hasMinutes: 600, parts: [{ number: 'a', minutes: 90 - 600 / 7 }] },
    ]);
  });

  it('says what will be late, and what is', () => {
    const { jobs } = plan([job('gone', 60, '2026-11-27'), job('much', 700, '2026-12-01')], TERMS);
    expect(jobs.map(({ number, late }) => [number, late])).toEqual([
      ['gone', true],
      ['much', true],
    ]);
  });

  it('proposes no sooner than buyers are told, and then the first week with room', () => {
    const by = (jobs: Job[]): string[] =>
      plan(jobs, TERMS)
        .jobs.filter(({ dueOn }) => dueOn === null)
        .map(({ by: day }) => day);
    // Two weeks after a Monday is a Monday: the Friday of that week.
    expect(by([job('a', 60, null)])).toEqual(['2026-12-18']);
    // Two weeks after a Sunday is a Sunday: that day itself.
    expect(plan([job('a', 60, null, '2026-12-06')], { ...TERMS, today: '2026-12-06' }).jobs[0]?.by).toBe(
      '2026-12-20',
    );
    // An order that has waited is not made to wait again.
    expect(by([job('a', 60, null, '2026-10-01')])).toEqual(['2026-12-04']);
    // Three weeks are spoken for up to their last hour.
    expect(by([job('full', 1800, '2026-12-18'), job('a', 60, null)])).toEqual(['2026-12-25']);
    // Room now is of no use where a later week would overflow for it.
    expect(by([job('late', 2400, '2026-12-25'), job('a', 60, null)])).toEqual(['2027-01-01']);
    // Each proposal is work for the next.
    expect(by([job('a', 1800, null), job('b', 1, null)])).toEqual(['2026-12-18', '2026-12-25']);
  });
});

const day = fc.integer({ min: -20, max: 120 }).map((days) => addDays('2026-11-30', days));
const jobs = fc
  .array(
    fc.record({
      minutes: fc.integer({ min: 1, max: 2000 }),
      dueOn: fc.option(day, { nil: null }),
      receivedOn: fc.integer({ min: -30, max: 0 }).map((days) => addDays('2026-11-30', days)),
    }),
    { maxLength: 12 },
  )
  .map((all) => all.map((one, at) => ({ ...one, number: `n${at}` })));
const terms = fc.record({
  today: fc.integer({ min: 0, max: 6 }).map((days) => addDays('2026-11-30', days)),
  hoursPerWeek: fc.integer({ min: 1, max: 40 }),
  readyWeeks: fc.integer({ min: 0, max: 6 }),
});

describe('whatever there is to do', () => {
  it('no week is given more minutes than it has, and every minute is given once', () => {
    let weeksJudged = 0;
    fc.assert(
      fc.property(jobs, terms, (all, by) => {
        const { weeks, jobs: planned } = plan(all, by);
        const given = new Map<string, number>();
        weeks.forEach(({ monday, hasMinutes, parts }, at) => {
          weeksJudged += 1;
          expect(monday).toBe(addDays(mondayOf(by.today), 7 * at));
          const sum = parts.reduce((minutes, part) => minutes + part.minutes, 0);
          expect(sum).toBeLessThanOrEqual(hasMinutes + 1e-6);
          expect(hasMinutes).toBeLessThanOrEqual(60 * by.hoursPerWeek + 1e-6);
          for (const { number, minutes } of parts) given.set(number, (given.get(number) ?? 0) + minutes);
        });
        expect(planned).toHaveLength(all.length);
        for (const { number, minutes } of all) expect(given.get(number)).toBeCloseTo(minutes, 4);
      }),
    );
    expect(weeksJudged).toBeGreaterThan(300);
  });

  it('a proposal makes nothing late, and no week before it would have done', () => {
    let proposalsJudged = 0;
    let withSoonerWeeks = 0;
    fc.assert(
      fc.property(jobs, terms, (all, by) => {
        const dated = all.filter(({ dueOn }) => dueOn !== null);
        const undated = all.find(({ dueOn }) => dueOn === null);
        if (undated === undefined || plan(dated, by).jobs.some(doneLate)) return;
        proposalsJudged += 1;
        const taken = plan([...dated, undated], by);
        expect(taken.jobs.some(doneLate)).toBe(false);
        const proposed = taken.jobs.find(({ number }) => number === undated.number)?.by ?? '';
        const promised = addDays(undated.receivedOn, 7 * by.readyWeeks);
        const earliest = promised < by.today ? by.today : promised;
        expect(proposed >= earliest).toBe(true);
        for (
          let sunday = addDays(mondayOf(earliest), 6);
          sunday < mondayOf(proposed);
          sunday = addDays(sunday, 7)
        ) {
          withSoonerWeeks += 1;
          const sooner = plan([...dated, { ...undated, dueOn: sunday }], by);
          expect(sooner.jobs.some(doneLate)).toBe(true);
        }
      }),
      { numRuns: 400 },
    );
    expect(proposalsJudged).toBeGreaterThan(40);
    expect(withSoonerWeeks).toBeGreaterThan(10);
  });

  it('the minutes up to a week are the sum of its weeks', () => {
    fc.assert(
      fc.property(terms, fc.integer({ min: 0, max: 30 }), (by, week) => {
        const full = 60 * by.hoursPerWeek;
        expect(minutesThrough(week, by)).toBeCloseTo((full * daysLeft(by.today)) / 7 + week * full, 6);
      }),
    );
  });
});

/** Done after the week of its day; days that are past already are nobody's doing. */
function doneLate({ by, doneIn }: { readonly by: string; readonly doneIn: string }): boolean {
  return mondayOf(by) < doneIn;
}
