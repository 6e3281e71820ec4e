/** Small checkers of plain data: is it of the type it should be? Total for any JSON. */
import type { ValidationError } from '../validationError.ts';
import { MOST_PROBLEMS, MOST_TEXT } from '../caps.ts';

/** Collects what is wrong with `value`, found at path `at`. */
export type Checker = (value: unknown, at: string, problems: ValidationError[]) => void;

/** Every problem found so far, plus this one; past the cap nothing more is reported. */
export function report(
  problems: ValidationError[],
  code: ValidationError['code'],
  at: string,
  args: ValidationError['args'] = {},
): void {
  if (problems.length < MOST_PROBLEMS) problems.push({ code, at, args });
}

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const want =
  (what: string, holds: (value: unknown) => boolean): Checker =>
  (value, at, problems) => {
    if (!holds(value)) report(problems, 'bad-shape', at, { want: what });
  };

export const flag = want('true or false', (value) => typeof value === 'boolean');

export const text = want('text', (value) => typeof value === 'string' && value.length <= MOST_TEXT);

/** A key of `components`: not empty, and no name that every object has. */
export const id = want(
  'id',
  (value) => typeof value === 'string' && value !== '' && value.length <= MOST_TEXT && !(value in {}),
);

export const oneOf = (names: readonly (string | number)[]): Checker =>
  want(names.join(', '), (value) => names.includes(value as string | number));

/** A finite number from `least` to `most`; out of range is a bad measure, not a bad shape. */
export const number =
  (least: number, most: number): Checker =>
  (value, at, problems) => {
    if (typeof value !== 'number' || !Number.isFinite(value)) {
      report(problems, 'bad-shape', at, { want: 'number' });
    } else if (value < least || value > most) {
      report(problems, value > most ? 'too-large' : 'bad-measure', at, { value, least, most });
    }
  };

/** A whole number from `least` to `most`. */
export const whole =
  (least: number, most: number): Checker =>
  (value, at, problems) => {
    if (!Number.isInteger(value)) report(problems, 'bad-shape', at, { want: 'whole number' });
    else number(least, most)(value, at, problems);
  };

export const orNull =
  (check: Checker): Checker =>
  (value, at, problems) => {
    if (value !== null) check(value, at, problems);
  };

/** A field that may be left out. */
export const optional =
  (check: Checker): Checker =>
  (value, at, problems) => {
    if (value !== undefined) check(value, at, problems);
  };

export const list =
  (check: Checker, most: number): Checker =>
  (value, at, problems) => {
    if (!Array.isArray(value)) report(problems, 'bad-shape', at, { want: 'list' });
    else if (value.length > most) report(problems, 'too-large', at, { value: value.length, least: 0, most });
    // `Array.from` also visits the holes of a sparse list, which `forEach` passes over.
    else Array.from(value).forEach((entry, index) => check(entry, `${at}.${index}`, problems));
  };

/** An object with these fields; what else it holds is no concern of the core's. */
export const fields =
  (checks: Readonly<Record<string, Checker>>): Checker =>
  (value, at, problems) => {
    if (!isObject(value)) {
      report(problems, 'bad-shape', at, { want: 'object' });
      return;
    }
    for (const [name, check] of Object.entries(checks)) {
      check(
        Object.hasOwn(value, name) ? value[name] : undefined,
        at === '' ? name : `${at}.${name}`,
        problems,
      );
    }
  };

/** An object from ids to values of one kind. */
export const table =
  (check: Checker, most: number): Checker =>
  (value, at, problems) => {
    if (!isObject(value)) {
      report(problems, 'bad-shape', at, { want: 'object' });
      return;
    }
    const entries = Object.entries(value);
    if (entries.length > most) report(problems, 'too-large', at, { value: entries.length, least: 0, most });
    else for (const [name, entry] of entries) check(entry, `${at}.${name}`, problems);
  };
