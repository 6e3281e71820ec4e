/** A YAML text made to say something else, of which only what changes is written anew. */
import { isCollection, isMap, isScalar, isSeq, Lexer, parseDocument, visit, type Document } from 'yaml';
import { firstMistake, fieldMistake } from '../read/yamlMistake.ts';
import type { FieldPath } from '../read/problem.ts';
import { onLines } from './block.ts';
import { inBraces } from './flow.ts';
import { throughModel } from './model.ts';
import {
  isFields,
  isList,
  isScalarValue,
  samePlain,
  type Plain,
  type PlainMap,
  type Scalar,
} from './plain.ts';
import { fieldLines, type Look } from './render.ts';
import { scalarText, type Style } from './scalarText.ts';
import { columnOf, lineEnd, NoSplice, spliced, type At, type Sheet, type Splice } from './splice.ts';

/** A text that can't be changed: it isn't YAML, holds no fields, or has references that the change would break. */
export class EditError extends Error {
  constructor(why: string) {
    super(`can't be changed: ${why}`);
    this.name = 'EditError';
  }
}

export type Rewritten = {
  readonly text: string;
  /** True where the whole file had to be written anew from what it says; remarks are kept then, its layout isn't. */
  readonly reformatted: boolean;
};

/** Names of fields at a path, in the order that its schema has them. */
export type OrderOf = (path: FieldPath) => readonly string[];

const STYLES: Readonly<Record<string, Style>> = {
  QUOTE_SINGLE: 'single',
  QUOTE_DOUBLE: 'double',
  BLOCK_FOLDED: 'folded',
  BLOCK_LITERAL: 'literal',
};

/** Column that folded lines end before, where a file has none yet. */
const USUAL_WIDTH = 88;

const parse = (text: string): Document.Parsed =>
  parseDocument(text, { keepSourceTokens: true, prettyErrors: false, uniqueKeys: false, logLevel: 'silent' });

/**
 * What a YAML text says.
 * @throws EditError where it isn't YAML, or references in it have no end
 */
export function plainOf(text: string): Plain {
  return dataOf(text, parse(text));
}

function dataOf(text: string, document: Document.Parsed): Plain {
  const mistake = firstMistake(text, document.errors) ?? fieldMistake(document);
  if (mistake !== null) throw new EditError(mistake.error.code);
  try {
    return (document.toJS({ maxAliasCount: 100 }) as Plain | undefined) ?? {};
  } catch {
    throw new EditError('yaml-references');
  }
}

/** Spaces of a level and width of folded lines, by the file's own example. */
function lookOf(text: string, document: Document.Parsed): Look {
  let step = 0;
  let width = 0;
  visit(document, {
    Map: (_, map, path) => {
      const outer = path.findLast((one) => isMap(one));
      const inList = path.some((one) => isSeq(one));
      if (step > 0 || inList || map.flow === true || !map.range || !isMap(outer) || !outer.range) return;
      step = columnOf(text, map.range[0]) - columnOf(text, outer.range[0]);
    },
    Scalar: (_, scalar) => {
      if (scalar.type !== 'BLOCK_FOLDED' || !scalar.range) return;
      const [, ...lines] = text.slice(scalar.range[0], scalar.range[1]).trimEnd().split(/\r?\n/);
      if (lines.length > 1) width = Math.max(width, ...lines.map((line) => line.length));
    },
  });
  return {
    step: step > 0 && step <= 8 ? step : 2,
    width: width === 0 ? USUAL_WIDTH : Math.max(60, Math.min(width, 110)),
  };
}

/** A value written in place of another, with the remark on its line. */
function editScalar(sheet: Sheet, node: unknown, next: Scalar, at: At): Splice[] | null {
  if (!isScalar(node) || !node.range || node.range[1] <= node.range[0]) return null;
  const { text, eol, look } = sheet;
  const [start, end] = node.range;
  const style = STYLES[node.type ?? ''] ?? 'plain';
  const block = style === 'folded' || style === 'literal';
  const headEnd = block ? lineEnd(text, start) : end;
  const ownIndent = block ? /^ *(?=\S)/m.exec(text.slice(headEnd, end))?.[0].length : undefined;
  const spot = {
    flow: at.flow,
    indent: ownIndent ?? at.indent,
    column: columnOf(text, start),
    width: look.width,
  };
  const { head, lines } = scalarText(next, style, spot);
  if (!block && lines.length === 0) return [{ start, end, by: head }];
  const line = block ? text.slice(start, headEnd).replace(/^\S+/, '') : text.slice(end, lineEnd(text, end));
  const ends = text.slice(start, block ? end : lineEnd(text, end)).endsWith('\n');
  const by = [head + line.trimEnd(), ...lines].join(eol) + (ends ? eol : '');
  return [{ start, end: block ? end : lineEnd(text, end), by }];
}

function editNode(sheet: Sheet, node: unknown, old: Plain | undefined, next: Plain, at: At): Splice[] | null {
  if (samePlain(old, next)) return [];
  if (old === undefined) return null;
  if (isScalarValue(next)) return editScalar(sheet, node, next, at);
  if (!isCollection(node)) return null;
  const inner = (one: unknown, was: Plain | undefined, becomes: Plain, where: At): Splice[] | null =>
    editNode(sheet, one, was, becomes, where);
  const { list, fields } = node.flow === true ? inBraces : onLines;
  if (isList(old) && isList(next)) {
    return old.length === 0 || next.length === 0 ? null : list(sheet, node, old, next, at, inner);
  }
  if (isFields(old) && isFields(next)) {
    const empty = Object.keys(old).length === 0 || Object.keys(next).length === 0;
    return empty ? null : fields(sheet, node, old, next, at, inner);
  }
  return null;
}

/** Fields behind all remarks of a file that has none yet. */
function appended({ text, eol, look }: Sheet, next: PlainMap): string {
  const lines = Object.entries(next).flatMap(([name, value]) => fieldLines(name, value, 0, look));
  const before = text === '' || text.endsWith('\n') ? text : text + eol;
  return before + lines.map((line) => line + eol).join('');
}

function onceSpliced(sheet: Sheet, old: Plain, next: PlainMap): string {
  const { contents } = sheet.document;
  if (contents === null) return appended(sheet, next);
  const splices = editNode(sheet, contents, old, next, { path: [], flow: false, indent: sheet.look.step });
  if (splices === null) throw new NoSplice();
  return spliced(sheet.text, splices);
}

/** The remarks of a text, each as often as it stands there. */
function remarksOf(text: string): Map<string, number> {
  const counts = new Map<string, number>();
  for (const token of new Lexer().lex(text)) {
    if (token.startsWith('#')) counts.set(token.trimEnd(), (counts.get(token.trimEnd()) ?? 0) + 1);
  }
  return counts;
}

/** How many lines from both ends two texts share; between them lies what was changed. */
function changedLines(before: string, after: string): { readonly before: string; readonly after: string } {
  const one = before.split('\n');
  const other = after.split('\n');
  let start = 0;
  while (start < one.length && start < other.length && one[start] === other[start]) start += 1;
  let end = 0;
  const most = Math.min(one.length, other.length) - start;
  while (end < most && one[one.length - 1 - end] === other[other.length - 1 - end]) end += 1;
  const cut = (lines: string[]): string => lines.slice(start, lines.length - end).join('\n');
  return { before: cut(one), after: cut(other) };
}

/** True where every remark outside the changed lines is still one. */
function keepsRemarks(before: string, after: string): boolean {
  const changed = changedLines(before, after);
  const inChanged = remarksOf(changed.before);
  const now = remarksOf(after);
  return [...remarksOf(before)].every(
    ([remark, count]) => (now.get(remark) ?? 0) >= count - (inChanged.get(remark) ?? 0),
  );
}

/** Rounds until references that a change has touched are written out. */
const MOST_ROUNDS = 4;

/** The text by splices; null where that doesn't lead to what is meant. */
function bySplices(text: string, first: Document.Parsed, next: PlainMap, order: OrderOf): string | null {
  let now = text;
  try {
    for (let round = 0; round < MOST_ROUNDS; round += 1) {
      const document = round === 0 ? first : parse(now);
      const data = dataOf(now, document);
      if (samePlain(data, next)) return keepsRemarks(text, now) ? now : null;
      const eol = now.includes('\r\n') ? '\r\n' : '\n';
      now = onceSpliced({ text: now, document, look: lookOf(now, document), eol, order }, data, next);
    }
  } catch (error) {
    if (!(error instanceof NoSplice) && !(error instanceof EditError)) throw error;
  }
  return null;
}

/**
 * Makes `text` say `next`. What doesn't change keeps its text byte for byte:
 * remarks, order, blank lines, quotes, line ends. The result is read again
 * before it is given out.
 * @throws EditError where the text isn't YAML with fields, or can't be made to say it
 */
export function rewrite(text: string, next: PlainMap, order: OrderOf = () => []): Rewritten {
  const document = parse(text);
  const data = dataOf(text, document);
  if (!isFields(data)) throw new EditError('not-fields');
  const done = bySplices(text, document, next, order);
  if (done !== null) return { text: done, reformatted: false };
  const whole = throughModel(parse(text), data, next, text.includes('\r\n') ? '\r\n' : '\n');
  if (whole === null || !samePlain(plainOf(whole), next)) throw new EditError('yaml-references');
  return { text: whole, reformatted: true };
}
