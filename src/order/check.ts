/**
 * Is this an order document? Total: whatever was parsed, it answers. Documents
 * from outside are checked by it alone, at the desk as in the buyer's browser.
 */
import { orderFields } from './fields.ts';

/** The path of what is wrong with a value that stands at `at`; null where nothing is. */
type Check = (value: unknown, at: string) => string | null;

const check =
  (holds: (value: unknown) => boolean): Check =>
  (value, at) =>
    holds(value) ? null : at;

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const join = (at: string, key: string): string => (at === '' ? key : `${at}.${key}`);

const order = orderFields<Check>({
  text: (least, most, pattern) =>
    check(
      (value) =>
        typeof value === 'string' && value.length >= least && value.length <= most && pattern.test(value),
    ),
  number: (least, most) => check((value) => typeof value === 'number' && value >= least && value <= most),
  whole: (least, most) =>
    check((value) => Number.isInteger(value) && (value as number) >= least && (value as number) <= most),
  oneOf: (values) => check((value) => values.some((one) => one === value)),
  list: (least, most, each) =>
    check(
      (value) =>
        Array.isArray(value) &&
        value.length >= least &&
        value.length <= most &&
        // The copy also has the holes of a sparse list, which `every` passes over.
        [...value].every((one) => each(one, '') === null),
    ),
  map: (most, key, each) =>
    check(
      (value) =>
        isRecord(value) &&
        Object.keys(value).length <= most &&
        Object.entries(value).every(([name, one]) => key(name, '') === null && each(one, '') === null),
    ),
  fields: (fields) => (value, at) => {
    if (!isRecord(value)) return at;
    for (const [key, field] of Object.entries(fields)) {
      const wrong = field(Object.hasOwn(value, key) ? value[key] : undefined, join(at, key));
      if (wrong !== null) return wrong;
    }
    const unknown = Object.keys(value).find((key) => !Object.hasOwn(fields, key));
    return unknown === undefined ? null : join(at, unknown);
  },
  either: (tag, cases) => (value, at) => {
    if (!isRecord(value)) return at;
    const named = Object.entries(cases).find(([name]) => Object.hasOwn(value, tag) && value[tag] === name);
    return named === undefined ? join(at, tag) : named[1](value, at);
  },
  test: check,
});

/**
 * Checks a value of unknown origin.
 * @returns null where it is an order document; else the path of the first field that is not, `''` for the whole
 */
export const checkOrder = (value: unknown): string | null => order(value, '');
