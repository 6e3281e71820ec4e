/** Lists in brackets and fields in braces, changed in the way they are written. */
import { isAlias, isMap, isScalar, isSeq, type Pair } from 'yaml';
import { align } from './align.ts';
import type { Plain, PlainMap } from './plain.ts';
import { flowPair, flowText } from './render.ts';
import {
  NoSplice,
  spliced,
  type At,
  type EditNode,
  type Editors,
  type Sheet,
  type Splice,
} from './splice.ts';
import { mergedKeys } from './order.ts';

type Span = { readonly start: number; readonly end: number };

/** The old element that a new one is made of, and its text. */
type Element = { readonly from: number | null; readonly text: string };

function spanOf(node: unknown): Span {
  if (!(isScalar(node) || isMap(node) || isSeq(node) || isAlias(node)) || !node.range) throw new NoSplice();
  return { start: node.range[0], end: node.range[1] };
}

function pairSpan({ key, value }: Pair): Span {
  const { start, end } = spanOf(key);
  return { start, end: value === null || value === undefined ? end : Math.max(end, spanOf(value).end) };
}

/** Brackets and all, with the separators that stood there, and remarks among them. */
function rebuilt(text: string, whole: Span, spans: readonly Span[], elements: readonly Element[]): string {
  const first = spans[0];
  const last = spans.at(-1);
  if (first === undefined || last === undefined) throw new NoSplice();
  const between = spans.slice(1).map((span, at) => text.slice(spans[at]?.end, span.start));
  const usual = (between[0] ?? ', ').replaceAll(/[ \t]*#[^\r\n]*/g, '');
  const parts = elements.map(({ from, text: own }, at) => {
    if (at === elements.length - 1) return own;
    return own + (from === null ? usual : (between[from] ?? usual));
  });
  return text.slice(whole.start, first.start) + parts.join('') + text.slice(last.end, whole.end);
}

/** An element's text with its value changed. */
function elementText(
  sheet: Sheet,
  span: Span,
  splices: readonly Splice[] | null,
  anew: () => string,
): string {
  if (splices === null) return anew();
  return spliced(sheet.text.slice(span.start, span.end), splices, span.start);
}

function editFlowList(
  sheet: Sheet,
  node: unknown,
  old: readonly Plain[],
  next: readonly Plain[],
  at: At,
  editNode: EditNode,
): Splice[] {
  if (!isSeq(node)) throw new NoSplice();
  const spans = node.items.map((item) =>
    isScalar(item) || isMap(item) || isSeq(item) || isAlias(item) ? spanOf(item) : pairSpan(item as Pair),
  );
  const elements = align(old, next).map(({ from }, to): Element => {
    const value = next[to] as Plain;
    const anew = (): string => flowText(value, sheet.look);
    const span = from === null ? undefined : spans[from];
    if (from === null || span === undefined) return { from: null, text: anew() };
    const inner = editNode(node.items[from], old[from], value, {
      ...at,
      path: [...at.path, from],
      flow: true,
    });
    return { from, text: elementText(sheet, span, inner, anew) };
  });
  const whole = spanOf(node);
  return [{ ...whole, by: rebuilt(sheet.text, whole, spans, elements) }];
}

function editFlowMap(
  sheet: Sheet,
  node: unknown,
  old: PlainMap,
  next: PlainMap,
  at: At,
  editNode: EditNode,
): Splice[] {
  if (!isMap(node)) throw new NoSplice();
  const pairs = node.items as readonly Pair[];
  const spans = pairs.map(pairSpan);
  const names = pairs.map(({ key }) => (isScalar(key) ? String(key.value) : ''));
  const elements = mergedKeys(names, next, sheet.order(at.path)).map((name): Element => {
    const value = next[name] as Plain;
    const anew = (): string => flowPair(name, value, sheet.look);
    const from = names.indexOf(name);
    const span = spans[from];
    if (span === undefined) return { from: null, text: anew() };
    const inner = editNode(pairs[from]?.value, old[name], value, {
      ...at,
      path: [...at.path, name],
      flow: true,
    });
    return { from, text: elementText(sheet, span, inner, anew) };
  });
  const whole = spanOf(node);
  return [{ ...whole, by: rebuilt(sheet.text, whole, spans, elements) }];
}

/** Within brackets and braces. */
export const inBraces: Editors = { list: editFlowList, fields: editFlowMap };
