/** Proposed due days that the maker takes over, read from the week's form. */
import { readNumber } from '#order/number.ts';
import { isDay } from '#words/day.ts';

export type TakenDue = {
  readonly number: string;
  /** The order's version that she was looking at. */
  readonly version: number;
  /** Day, `2026-12-20`. */
  readonly on: string;
};

/** Reads `take` fields of `number version day`; null where one is none, or there are none. */
export function readTaken(form: URLSearchParams): TakenDue[] | null {
  const taken = form.getAll('take').map(readOne);
  const read = taken.filter((one) => one !== null);
  return read.length === 0 || read.length < taken.length ? null : read;
}

function readOne(text: string): TakenDue | null {
  const [, written = '', version = '', on = ''] = /^(\S{1,20}) (\d{1,9}) (\S{10})$/.exec(text) ?? [];
  const read = readNumber(written);
  return 'number' in read && isDay(on) ? { number: read.number, version: Number(version), on } : null;
}
