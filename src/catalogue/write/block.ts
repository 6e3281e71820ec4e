/** Lists and fields on lines of their own, changed item by item; the lines of the others stay as they are. */
import { isMap, isScalar, isSeq, type Pair, type YAMLSeq } from 'yaml';
import { align } from './align.ts';
import {
  blockOf,
  joined,
  joinLeads,
  partLead,
  startsBlank,
  withoutBlankStart,
  type Block,
  type Chunk,
  type Lying,
} from './chunks.ts';
import { mergedKeys } from './order.ts';
import { isScalarValue, type Plain, type PlainMap } from './plain.ts';
import { fieldLines, flowText, itemLines, valueText } from './render.ts';
import {
  lineEnd,
  NoSplice,
  spliced,
  type At,
  type EditNode,
  type Editors,
  type Sheet,
  type Splice,
} from './splice.ts';

/** A remark behind the name, on its line, which stays when the value is written anew. */
function remarkOnLine({ text }: Sheet, { mark, contentEnd, node }: Lying): string {
  const end = lineEnd(text, mark);
  const behindName = /^[ \t]*(?:[|>][-+\d]*)?([ \t]+#[^\r\n]*)?\r?\n?$/.exec(text.slice(mark, end));
  if (behindName !== null) return behindName[1] ?? '';
  if (isScalar(node) && contentEnd <= end)
    return /^[ \t]+#[^\r\n]*/.exec(text.slice(contentEnd, end))?.[0] ?? '';
  return '';
}

/** The item's lines with its value written anew behind its name or dash. */
function rewritten(sheet: Sheet, item: Lying, value: Plain, column: number): string {
  const { text, look, eol } = sheet;
  const inList = text[item.mark - 1] === '-';
  const name = text.slice(item.start, item.mark);
  const indent = column + (inList ? 2 : look.step);
  const { head, lines } = valueText(value, { indent, column: column + name.length + 1, inList }, look);
  const remark = remarkOnLine(sheet, item);
  // An item's fields begin on the line of its dash, unless a remark stands there.
  const beside = inList && head === '' && remark === '';
  const first = beside ? ` ${(lines[0] ?? '').trimStart()}` : head === '' ? remark : ` ${head}${remark}`;
  const rest = beside ? lines.slice(1) : lines;
  const ownLines = text[item.contentEnd - 1] === '\n' ? item.contentEnd : lineEnd(text, item.contentEnd);
  return [name + first, ...rest].join(eol) + eol + text.slice(ownLines, item.end);
}

/** The item's lines as they are to be: untouched, changed within, or written anew. */
function bodyOf(
  sheet: Sheet,
  item: Lying,
  column: number,
  change: { readonly old: Plain | undefined; readonly next: Plain; readonly at: At },
  editNode: EditNode,
): string {
  const { text } = sheet;
  const { old, next, at } = change;
  const inner = editNode(item.node, old, next, at);
  if (inner === null) return rewritten(sheet, item, next, column);
  return spliced(text.slice(item.start, item.end), inner, item.start);
}

/** What a block is made of anew: an old item, or lines. */
type Part = { readonly from: number | null; readonly moved: boolean; readonly body: string };

/** True where blank lines stand between all items. */
const isSpaced = (items: readonly Lying[]): boolean =>
  items.length > 1 && items.slice(1).every(({ lead }) => startsBlank(lead));

/** Blank line before a new item: where all have one, or where it is of several lines and a gap was there. */
function gapBefore({ items }: Block, part: Part, nextFrom: number | undefined): boolean {
  if (isSpaced(items)) return true;
  const severalLines = part.body.trimEnd().includes('\n');
  const next = nextFrom === undefined ? undefined : items[nextFrom];
  return severalLines && next !== undefined && startsBlank(next.lead);
}

/** The whole block with its parts in their new order, as one splice. */
function reordered(sheet: Sheet, block: Block, parts: readonly Part[]): Splice {
  const { items, midLine } = block;
  const [first] = items;
  const last = items.at(-1);
  if (first === undefined || last === undefined) throw new NoSplice();
  const stay = new Set(parts.flatMap(({ from, moved }) => (from === null || moved ? [] : [from])));
  let passed = 0;
  /** What stays of the leads of items that went, up to the old place `until`. */
  const left = (until: number): string => {
    let stays = '';
    for (; passed < until; passed += 1) {
      if (!stay.has(passed)) stays = joinLeads(stays, partLead(items[passed]?.lead ?? '').others);
    }
    return stays;
  };
  const chunks = parts.map((part, place): Chunk => {
    const item = part.from === null ? undefined : items[part.from];
    if (item !== undefined && part.from !== null && !part.moved) {
      const lead = joinLeads(left(part.from), item.lead);
      passed = part.from + 1;
      return { lead, body: part.body };
    }
    const nextFrom = parts.slice(place + 1).find(({ from, moved }) => from !== null && !moved)?.from;
    const gap = place > 0 && gapBefore(block, part, nextFrom ?? undefined) ? sheet.eol : '';
    return { lead: gap + (item === undefined ? '' : partLead(item.lead).own), body: part.body };
  });
  // The first to stay may have had its gap before it; a new one before it wants one behind itself then.
  const spaced = isSpaced(items)
    ? chunks.map((chunk, at) =>
        at > 0 && !startsBlank(chunk.lead) ? { ...chunk, lead: sheet.eol + chunk.lead } : chunk,
      )
    : chunks;
  const start = midLine ? first.start : first.start - block.column - first.lead.length;
  const endsInLine = !sheet.text.slice(start, last.end).endsWith('\n');
  const tail = withoutBlankStart(left(items.length));
  return { start, end: last.end, by: joined(block, spaced, tail, sheet.eol, endsInLine) };
}

/** True where nothing comes, goes or moves. */
const isInPlace = (parts: readonly Part[], count: number): boolean =>
  parts.length === count && parts.every(({ from }, at) => from === at);

/** Each item that changed, by itself. */
const eachInPlace = ({ text }: Sheet, { items }: Block, parts: readonly Part[]): Splice[] =>
  items.flatMap(({ start, end }, at) => {
    const by = parts[at]?.body ?? '';
    const before = text.slice(start, end);
    if (by === before) return [];
    return [{ start, end, by: before.endsWith('\n') ? by : by.replace(/\r?\n$/, '') }];
  });

function finish(sheet: Sheet, block: Block, parts: readonly Part[]): Splice[] {
  return isInPlace(parts, block.items.length)
    ? eachInPlace(sheet, block, parts)
    : [reordered(sheet, block, parts)];
}

const newBody = (lines: readonly string[], column: number, eol: string): string =>
  lines.join(eol).slice(column) + eol;

function editMap(
  sheet: Sheet,
  node: unknown,
  old: PlainMap,
  next: PlainMap,
  at: At,
  editNode: EditNode,
): Splice[] {
  if (!isMap(node)) throw new NoSplice();
  const block = blockOf(sheet, node);
  const names = (node.items as readonly Pair[]).map(({ key }) => (isScalar(key) ? String(key.value) : ''));
  const parts = mergedKeys(names, next, sheet.order(at.path)).map((name): Part => {
    const value = next[name] as Plain;
    const from = names.indexOf(name);
    const item = block.items[from];
    if (item === undefined) {
      const lines = fieldLines(name, value, block.column, sheet.look);
      return { from: null, moved: false, body: newBody(lines, block.column, sheet.eol) };
    }
    const inner = { path: [...at.path, name], flow: false, indent: block.column + sheet.look.step };
    return {
      from,
      moved: false,
      body: bodyOf(sheet, item, block.column, { old: old[name], next: value, at: inner }, editNode),
    };
  });
  return finish(sheet, block, parts);
}

/** A new item is written as its neighbours are: within braces or on lines of its own. */
function itemBody(sheet: Sheet, node: YAMLSeq, block: Block, value: Plain): string {
  const inBraces = node.items.every((item) => (isMap(item) || isSeq(item)) && item.flow === true);
  const lines =
    inBraces && !isScalarValue(value)
      ? [`${' '.repeat(block.column)}- ${flowText(value, sheet.look)}`]
      : itemLines(value, block.column, sheet.look);
  return newBody(lines, block.column, sheet.eol);
}

function editList(
  sheet: Sheet,
  node: unknown,
  old: readonly Plain[],
  next: readonly Plain[],
  at: At,
  editNode: EditNode,
): Splice[] {
  if (!isSeq(node)) throw new NoSplice();
  const block = blockOf(sheet, node);
  const parts = align(old, next).map(({ from, moved }, to): Part => {
    const value = next[to] as Plain;
    const item = from === null ? undefined : block.items[from];
    if (from === null || item === undefined) {
      return { from: null, moved: false, body: itemBody(sheet, node, block, value) };
    }
    const inner = { path: [...at.path, from], flow: false, indent: block.column + 2 };
    return {
      from,
      moved,
      body: bodyOf(sheet, item, block.column, { old: old[from], next: value, at: inner }, editNode),
    };
  });
  return finish(sheet, block, parts);
}

/** On lines of their own. */
export const onLines: Editors = { list: editList, fields: editMap };
