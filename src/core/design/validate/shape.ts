/** Small checkers of plain data: is it of the type it should be? Total for any JSON. */
import type { FieldType, FigureUnit, ValidationError } from '../validationError.ts';
import { MOST_PROBLEMS, MOST_TEXT } from '../caps.ts';

/** Collects what is wrong with `value`, found at path `at`. */
export type Checker = (value: unknown, at: string, problems: ValidationError[]) => void;

/** Adds one to the errors found so far; past the cap nothing more is reported. */
export function report(problems: ValidationError[], error: ValidationError): void {
  if (problems.length < MOST_PROBLEMS) problems.push(error);
}

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const wrongType = (problems: ValidationError[], at: string, wanted: FieldType): void =>
  report(problems, { code: 'wrong-type', at, wanted });

export const flag: Checker = (value, at, problems) => {
  if (typeof value !== 'boolean') wrongType(problems, at, 'flag');
};

/** A text of that type within the cap. */
const textOf =
  (wanted: FieldType, holds: (value: string) => boolean): Checker =>
  (value, at, problems) => {
    if (typeof value !== 'string' || !holds(value)) wrongType(problems, at, wanted);
    else if (value.length > MOST_TEXT)
      report(problems, { code: 'text-too-long', at, length: value.length, most: MOST_TEXT });
  };

export const text = textOf('text', () => true);

/** A key of `components`: not empty, and no name that every object has. */
export const id = textOf('id', (value) => value !== '' && !(value in {}));

export const oneOf =
  (options: readonly string[]): Checker =>
  (value, at, problems) => {
    if (!options.some((option) => option === value)) report(problems, { code: 'not-one-of', at, options });
  };

/** A finite number from `least` to `most`. */
export const number =
  (least: number, most: number, unit: FigureUnit): Checker =>
  (value, at, problems) => {
    if (typeof value !== 'number' || !Number.isFinite(value)) wrongType(problems, at, 'number');
    else if (value < least || value > most)
      report(problems, { code: 'out-of-range', at, value, least, most, unit });
  };

/** A whole number from `least` to `most`. */
export const whole =
  (least: number, most: number, unit: FigureUnit = 'none'): Checker =>
  (value, at, problems) => {
    if (!Number.isInteger(value)) wrongType(problems, at, 'whole');
    else number(least, most, unit)(value, at, problems);
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
    if (!Array.isArray(value)) wrongType(problems, at, 'list');
    else if (value.length > most)
      report(problems, { code: 'too-many-entries', at, count: value.length, most });
    // `Array.from` also visits the holes of a sparse list, which `forEach` passes over.
    else Array.from(value).forEach((entry, index) => check(entry, `${at}.${index}`, problems));
  };

/** An object with these fields; what else it holds is no concern of the core's. */
export const fields =
  (checks: Readonly<Record<string, Checker>>): Checker =>
  (value, at, problems) => {
    if (!isObject(value)) {
      wrongType(problems, at, 'object');
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
      wrongType(problems, at, 'object');
      return;
    }
    const entries = Object.entries(value);
    if (entries.length > most)
      report(problems, { code: 'too-many-entries', at, count: entries.length, most });
    else for (const [name, entry] of entries) check(entry, `${at}.${name}`, problems);
  };
