/** Days of the calendar. */

/** True for a day of the years 2000 to 2999, `2026-12-20`. */
export function isDay(text: string): boolean {
  if (!/^2\d{3}-\d{2}-\d{2}$/.test(text)) return false;
  const ms = Date.parse(text);
  return Number.isFinite(ms) && new Date(ms).toISOString().startsWith(text);
}
