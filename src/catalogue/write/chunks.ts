/** A list or fields on lines of their own, taken apart into the lines of each item and put together again. */
import { isAlias, isMap, isScalar, isSeq, type Pair, type YAMLMap, type YAMLSeq } from 'yaml';
import { columnOf, lineEnd, lineStart, NoSplice, type Sheet } from './splice.ts';

export type Chunk = {
  /** Blank lines and remarks before the item. */
  readonly lead: string;
  /** From the item's first sign to the end of its last line, remarks that are indented below it included. */
  readonly body: string;
};

/** An item as it stands in the file. */
export type Lying = {
  /** Offset of its name or dash. */
  readonly start: number;
  /** Offset behind the colon or the dash. */
  readonly mark: number;
  /** Offset behind what it says, remarks not counted. */
  readonly contentEnd: number;
  /** Offset behind its last line. */
  readonly end: number;
  readonly lead: string;
  /** The value's node. */
  readonly node: unknown;
};

export type Block = {
  readonly items: readonly Lying[];
  /** Column of names or dashes. */
  readonly column: number;
  /** The first item begins behind a dash, on the dash's line. */
  readonly midLine: boolean;
};

/** Offset behind what a node says; `otherwise` where it says nothing. */
function contentEnd(node: unknown, otherwise: number): number {
  if ((isMap(node) || isSeq(node)) && node.flow !== true) {
    const last = node.items.at(-1);
    if (last === undefined) return otherwise;
    const [mark] = marksOf(node).slice(-1);
    const value = isMap(node) ? (last as Pair).value : last;
    return contentEnd(value, (mark ?? { mark: otherwise }).mark);
  }
  if (!(isScalar(node) || isMap(node) || isSeq(node) || isAlias(node)) || !node.range) return otherwise;
  return node.range[1] > node.range[0] ? node.range[1] : otherwise;
}

type Mark = { readonly start: number; readonly mark: number };

/** Where each item begins, and where its colon or dash ends. */
function marksOf(node: YAMLMap | YAMLSeq): Mark[] {
  if (isMap(node)) {
    return (node.items as readonly Pair[]).map(({ key, srcToken }) => {
      const colon = srcToken?.sep?.find((token) => token.type === 'map-value-ind');
      const odd = srcToken?.start.some((token) => token.type === 'explicit-key-ind') ?? true;
      if (!isScalar(key) || !key.range || colon === undefined || odd) throw new NoSplice();
      return { start: key.range[0], mark: colon.offset + 1 };
    });
  }
  const token = node.srcToken;
  if (token?.type !== 'block-seq') throw new NoSplice();
  return token.items.flatMap((item) => {
    const dash = item.start.find((one) => one.type === 'seq-item-ind');
    return dash === undefined ? [] : [{ start: dash.offset, mark: dash.offset + 1 }];
  });
}

/** Lines of remarks, blank ones between them too, that are indented more than the item they follow. */
function withDeeperRemarks(text: string, from: number, column: number): number {
  let end = from;
  for (let at = from; at < text.length;) {
    const next = lineEnd(text, at);
    const line = text.slice(at, next);
    const indent = /^ *(?=#)/.exec(line)?.[0].length;
    if (indent !== undefined && indent > column) end = next;
    else if (line.trim() !== '') break;
    at = next;
  }
  return end;
}

/** The lines of an item's remarks above it: those that touch it. The head of a file is nobody's. */
function remarksAbove(text: string, start: number): number {
  const first = lineStart(text, start);
  let at = first;
  while (at > 0) {
    const above = lineStart(text, at - 1);
    if (!/^ *#/.test(text.slice(above, at)) || columnOf(text, text.indexOf('#', above)) !== start - first)
      break;
    at = above;
  }
  return at === 0 ? first : at;
}

/** Takes a block apart. Throws NoSplice where it is written in a way that has no lines of its own for each item. */
export function blockOf({ text }: Sheet, node: YAMLMap | YAMLSeq): Block {
  const marks = marksOf(node);
  const [first] = marks;
  if (first === undefined || marks.length !== node.items.length) throw new NoSplice();
  const column = columnOf(text, first.start);
  const midLine = text.slice(lineStart(text, first.start), first.start).trim() !== '';
  let previous = midLine ? first.start : remarksAbove(text, first.start);
  const items = marks.map(({ start, mark }, at): Lying => {
    const item = node.items[at];
    const value: unknown = isMap(node) ? (item as Pair).value : item;
    const inMiddle = at === 0 && midLine;
    const line = lineStart(text, start);
    if (columnOf(text, start) !== column || (!inMiddle && text.slice(line, start).trim() !== ''))
      throw new NoSplice();
    const content = contentEnd(value, mark);
    const lines = text[content - 1] === '\n' ? content : lineEnd(text, content);
    const end = withDeeperRemarks(text, lines, column);
    const lead = inMiddle ? '' : text.slice(previous, line);
    previous = end;
    return { start, mark, contentEnd: content, end, lead, node: value };
  });
  return { items, column, midLine };
}

const lines = (text: string): string[] => text.match(/[^\n]*\n|[^\n]+$/g) ?? [];
const isBlank = (line: string): boolean => line.trim() === '';

/** A field that was put out of use by a #, which belongs to no item. */
const OUT_OF_USE = /^ *#\s*(?:- )?[\w-]+:(?:\s|$)/;

/** A lead parted into what stays when the item goes, and the remarks of the item's own. */
export function partLead(lead: string): { readonly others: string; readonly own: string } {
  const all = lines(lead);
  const from = all.findLastIndex((line) => isBlank(line) || OUT_OF_USE.test(line)) + 1;
  return { others: all.slice(0, from).join(''), own: all.slice(from).join('') };
}

export const startsBlank = (text: string): boolean => isBlank(lines(text)[0] ?? '.');
export const withoutBlankStart = (text: string): string => text.replace(/^(?:[ \t]*\r?\n)+/, '');
const withoutBlankEnd = (text: string): string => text.replace(/(?:(?<=^|\n)[ \t]*\r?\n)+$/, '');

/** Joins what stays of a lead with the next one; one gap is enough. */
export function joinLeads(stays: string, lead: string): string {
  if (!startsBlank(lead)) return stays + lead;
  return withoutBlankEnd(stays) + lead;
}

/**
 * Puts a block together from its chunks, from the first one's lead on.
 * @param tail what stays of leads whose items went, at the end
 */
export function joined(
  { column, midLine }: Block,
  chunks: readonly Chunk[],
  tail: string,
  eol: string,
  endsInLine: boolean,
): string {
  const pad = ' '.repeat(column);
  const ended = (text: string): string => (text.endsWith('\n') ? text : text + eol);
  let carried = '';
  const parts = chunks.map(({ lead, body }, at) => {
    if (at > 0) {
      const between = carried + lead;
      carried = '';
      return between + pad + ended(body);
    }
    const first = withoutBlankStart(lead);
    if (!midLine) return first + pad + ended(body);
    // A dash stands before it on its line, where no remark can.
    carried = first;
    return ended(body);
  });
  const end = carried + withoutBlankEnd(withoutBlankStart(tail));
  const whole = parts.join('') + end;
  return endsInLine ? whole.replace(/\r?\n$/, '') : whole;
}
