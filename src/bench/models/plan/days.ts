/** Days and weeks of the calendar, as the plan counts them. A day is ISO 8601, `2026-12-20`; a week begins on Monday. */

const DAY_MS = 24 * 60 * 60 * 1000;

/** The day `days` later; earlier where it is negative. */
export function addDays(day: string, days: number): string {
  return new Date(Date.parse(day) + days * DAY_MS).toISOString().slice(0, 10);
}

/** Monday of the day's week (ISO 8601 week date). */
export function mondayOf(day: string): string {
  return addDays(day, -weekday(day));
}

/** Whole weeks from one day's week to another's; negative where the other is earlier. */
export function weeksBetween(from: string, to: string): number {
  return Math.round((Date.parse(mondayOf(to)) - Date.parse(mondayOf(from))) / (7 * DAY_MS));
}

/** Days left of its week, the day itself among them: 7 on a Monday, 1 on a Sunday. */
export function daysLeft(day: string): number {
  return 7 - weekday(day);
}

/** 0 for a Monday. */
function weekday(day: string): number {
  return (new Date(day).getUTCDay() + 6) % 7;
}
