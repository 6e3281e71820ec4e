/** Days of the calendar. */

/**
 * The day that an instant falls on at the bench, `2026-12-20`: by the clock on the maker's wall and not by UTC, where
 * a payment of her evening, or an invoice, may have the date of another day.
 * @param at ISO 8601, or milliseconds since 1970
 */
export function dayOf(at: string | number): string {
  const there = new Date(at);
  const two = (number: number): string => String(number).padStart(2, '0');
  return `${there.getFullYear()}-${two(there.getMonth() + 1)}-${two(there.getDate())}`;
}

/** True for a day of the years 2000 to 2999, `2026-12-20`. */
export function isDay(text: string): boolean {
  if (!/^2\d{3}-\d{2}-\d{2}$/.test(text)) return false;
  const ms = Date.parse(text);
  return Number.isFinite(ms) && new Date(ms).toISOString().startsWith(text);
}
