/** New values as YAML text, in the way the rest of the shop's files are written. */
import { isFields, isList, isScalarValue, type Plain, type PlainMap } from './plain.ts';
import { keyText, LONGEST_LINE, scalarText, type Written } from './scalarText.ts';

/** What the file is written like. */
export type Look = {
  /** Spaces from one level to the next. */
  readonly step: number;
  /** Column that folded lines end before. */
  readonly width: number;
};

/** Fields of an item that still read well within braces. */
const MOST_IN_BRACES = 2;

/** A value within brackets or braces. */
export function flowText(value: Plain, look: Look): string {
  if (isList(value)) return `[${value.map((item) => flowText(item, look)).join(', ')}]`;
  if (isFields(value)) {
    const pairs = Object.entries(value).map(([name, one]) => flowPair(name, one, look));
    return pairs.length === 0 ? '{}' : `{ ${pairs.join(', ')} }`;
  }
  return scalarText(value, null, { flow: true, indent: 0, column: 0, width: look.width }).head;
}

/** A field within braces. */
export const flowPair = (name: string, value: Plain, look: Look): string =>
  `${keyText(name)}: ${flowText(value, look)}`;

/** Whether a new value stands within brackets or braces: short lists of plain values, and short items. */
function isShort(value: Plain, column: number, inList: boolean, look: Look): boolean {
  if (isScalarValue(value)) return false;
  const parts = isList(value) ? value : Object.values(value);
  if (parts.length === 0) return true;
  if (!parts.every(isScalarValue) || parts.some((part) => String(part).includes('\n'))) return false;
  if (isFields(value) && (!inList || parts.length > MOST_IN_BRACES)) return false;
  return column + flowText(value, look).length <= LONGEST_LINE;
}

/** Where a value begins: `indent` of lines of its own, `column` behind the field's name. */
export type Begin = { readonly indent: number; readonly column: number; readonly inList: boolean };

/** A value behind a field's name or a dash. */
export function valueText(value: Plain, { indent, column, inList }: Begin, look: Look): Written {
  if (isScalarValue(value))
    return scalarText(value, null, { flow: false, indent, column, width: look.width });
  if (isShort(value, column, inList, look)) return { head: flowText(value, look), lines: [] };
  const lines = isList(value)
    ? value.flatMap((item) => itemLines(item, indent, look))
    : fieldsLines(value, indent, look);
  return { head: '', lines };
}

const fieldsLines = (fields: PlainMap, indent: number, look: Look): string[] =>
  Object.entries(fields).flatMap(([name, value]) => fieldLines(name, value, indent, look));

/** A field on lines of its own, each with its indentation. */
export function fieldLines(name: string, value: Plain, indent: number, look: Look): string[] {
  const key = `${' '.repeat(indent)}${keyText(name)}:`;
  const begin = { indent: indent + look.step, column: key.length + 1, inList: false };
  const { head, lines } = valueText(value, begin, look);
  return [head === '' ? key : `${key} ${head}`, ...lines];
}

/** An item of a list on lines of its own, its dash in column `indent`. */
export function itemLines(value: Plain, indent: number, look: Look): string[] {
  const dash = `${' '.repeat(indent)}- `;
  const begin = { indent: dash.length, column: dash.length, inList: true };
  const { head, lines } = valueText(value, begin, look);
  if (head !== '') return [dash + head, ...lines];
  const [first = '', ...rest] = lines;
  return [dash + first.slice(dash.length), ...rest];
}
