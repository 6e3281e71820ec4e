/** The numbers of like components in a row. */
import type { Format } from './format.ts';

/** "3–7: " for five in a row of which the last is number 7, "7: " for one; '' where they aren't counted. */
export function numbered(f: Format, last: number | null, count: number): string {
  if (last === null) return '';
  return count === 1 ? `${f.number(last)}: ` : `${f.number(last - count + 1)}–${f.number(last)}: `;
}
