/** Replacing parts of a text. */
import type { Document } from 'yaml';
import type { FieldPath } from '../read/problem.ts';
import type { Plain, PlainMap } from './plain.ts';
import type { Look } from './render.ts';

/** `text` from `start` to before `end` becomes `by`. */
export type Splice = { readonly start: number; readonly end: number; readonly by: string };

/** A document that is being changed. */
export type Sheet = {
  readonly text: string;
  readonly document: Document.Parsed;
  readonly look: Look;
  /** The file's own line end. */
  readonly eol: string;
  /** Names of fields at a path, in the order that its schema has them; empty where none is known. */
  readonly order: (path: FieldPath) => readonly string[];
};

/** Splices that make a node say what it should; null where the whole value is to be written anew. */
export type EditNode = (node: unknown, old: Plain | undefined, next: Plain, at: At) => Splice[] | null;

/** Where a value stands. */
export type At = {
  readonly path: FieldPath;
  /** Within brackets or braces. */
  readonly flow: boolean;
  /** Indentation that lines of its own would have. */
  readonly indent: number;
};

type Edit<Value> = (
  sheet: Sheet,
  node: unknown,
  old: Value,
  next: Value,
  at: At,
  editNode: EditNode,
) => Splice[];

/** Changes what stands in a list or in fields, in one of the two ways of writing them; neither is empty before or after. */
export type Editors = { readonly list: Edit<readonly Plain[]>; readonly fields: Edit<PlainMap> };

/** A place in a file that is written in a way that parts of it can't be replaced: the file is then written from its model. */
export class NoSplice extends Error {}

/** The text with all splices done, which mustn't overlap. `base`: offset of `text` within what they count from. */
export function spliced(text: string, splices: readonly Splice[], base = 0): string {
  return [...splices]
    .sort((one, other) => other.start - one.start)
    .reduce((now, { start, end, by }) => now.slice(0, start - base) + by + now.slice(end - base), text);
}

/** Offset just behind the line that `offset` is in. */
export function lineEnd(text: string, offset: number): number {
  const at = text.indexOf('\n', offset);
  return at < 0 ? text.length : at + 1;
}

/** Offset of the beginning of the line that `offset` is in. */
export const lineStart = (text: string, offset: number): number => text.lastIndexOf('\n', offset - 1) + 1;

/** The column of an offset, from 0. */
export const columnOf = (text: string, offset: number): number => offset - lineStart(text, offset);
