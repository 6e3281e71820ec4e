/** What an entry says, as plain data, and changes to it. */
import type { FieldPath } from '../read/problem.ts';

export type Scalar = string | number | boolean | null;
export type PlainMap = { readonly [field: string]: Plain };
export type Plain = Scalar | readonly Plain[] | PlainMap;

/** One field set anew; undefined removes it, and of a list the item. */
export type FieldChange = { readonly path: FieldPath; readonly value: Plain | undefined };

export const isList = (value: Plain | undefined): value is readonly Plain[] => Array.isArray(value);

export const isFields = (value: Plain | undefined): value is PlainMap =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

export const isScalarValue = (value: Plain | undefined): value is Scalar =>
  value === null || (value !== undefined && typeof value !== 'object');

/** The value at a path; undefined where there is none. */
export function valueAt(data: Plain | undefined, path: FieldPath): Plain | undefined {
  return path.reduce<Plain | undefined>((value, step) => {
    if (isList(value)) return typeof step === 'number' ? value[step] : undefined;
    return isFields(value) && Object.hasOwn(value, step) ? value[step] : undefined;
  }, data);
}

/** True where the schemas read both as the same: what YAML takes for a number or for yes is text to them as well. */
function sameScalar(one: Scalar, other: Scalar): boolean {
  if (one === null || other === null) return one === other;
  if (String(one) === String(other)) return true;
  if (typeof one === 'boolean') return other === (one ? 'yes' : 'no');
  return typeof other === 'boolean' && one === (other ? 'yes' : 'no');
}

/** True where the schemas read both as the same, whatever the order of fields. */
export function samePlain(one: Plain | undefined, other: Plain | undefined): boolean {
  if (one === undefined || other === undefined) return one === other;
  if (isList(one)) {
    return (
      isList(other) && one.length === other.length && one.every((item, at) => samePlain(item, other[at]))
    );
  }
  if (isFields(one)) {
    if (!isFields(other)) return false;
    const names = Object.keys(one);
    return (
      names.length === Object.keys(other).length &&
      names.every((name) => Object.hasOwn(other, name) && samePlain(one[name], other[name]))
    );
  }
  return isScalarValue(other) && sameScalar(one, other);
}

/** Fields with one of them set or removed; one that is new comes last. */
function withField(fields: PlainMap, name: string, value: Plain | undefined): PlainMap {
  if (value === undefined) return Object.fromEntries(Object.entries(fields).filter(([one]) => one !== name));
  return { ...fields, [name]: value };
}

function withItem(list: readonly Plain[], at: number, value: Plain | undefined): readonly Plain[] {
  if (at < 0 || at > list.length) throw new RangeError(`a list of ${list.length} has no place ${at}`);
  return value === undefined ? list.toSpliced(at, 1) : list.toSpliced(at, 1, value);
}

function changed(data: Plain | undefined, [step, ...rest]: FieldPath, value: Plain | undefined): Plain {
  const inner = (of: Plain | undefined): Plain | undefined =>
    rest.length === 0 ? value : value === undefined && of === undefined ? of : changed(of, rest, value);
  if (typeof step === 'number') {
    const list = isList(data) ? data : [];
    return withItem(list, step, inner(list[step]));
  }
  if (step === undefined) throw new RangeError('a change names the field that it changes');
  const fields = isFields(data) ? data : {};
  return withField(fields, step, inner(fields[step]));
}

/**
 * The data with changes made to it, one after the other. What a path leads
 * through and isn't there is made; an item one past a list's end is added.
 * @throws RangeError for an empty path, or a place that a list doesn't reach to
 */
export function applyChanges(data: Plain, changes: readonly FieldChange[]): Plain {
  return changes.reduce((now, { path, value }) => changed(now, path, value), data);
}

/**
 * The changes that make one of the other: field by field, lists as a whole.
 * @param one, other: both fields
 */
export function changesBetween(one: PlainMap, other: PlainMap, base: FieldPath = []): FieldChange[] {
  const names = new Set([...Object.keys(one), ...Object.keys(other)]);
  return [...names].flatMap((name): FieldChange[] => {
    const before = one[name];
    const after = other[name];
    if (samePlain(before, after)) return [];
    const path = [...base, name];
    if (isFields(before) && isFields(after)) return changesBetween(before, after, path);
    return [{ path, value: after }];
  });
}
