/** An authored file taken in: its data, and the line that each field stands on. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import {
  isMap,
  isPair,
  isScalar,
  isSeq,
  LineCounter,
  parseDocument,
  type Document,
  type ParsedNode,
} from 'yaml';
import { problemOfFile, type FieldPath, type Problem } from './problem.ts';

export type Source = {
  /** Path within the content folder. */
  readonly file: string;
  readonly data: unknown;
  /** Text after the heading block; empty for plain YAML. */
  readonly body: string;
  /** Line of a field, or of the nearest thing round it that is there. From 1. */
  readonly lineOf: (path: FieldPath) => number;
  /** True where the value was swallowed by a remark: `colour: #4a5866`. */
  readonly remarkAt: (path: FieldPath) => boolean;
};

export type Taken =
  | { readonly source: Source; readonly problems: readonly [] }
  | { readonly source: null; readonly problems: readonly Problem[] };

type Step = { readonly node: unknown; readonly offset: number };

/** The node at a path as far as it goes, and where the field's name begins. */
function follow(document: Document.Parsed, path: FieldPath): Step & { readonly whole: boolean } {
  let node: unknown = document.contents;
  let offset = document.contents?.range?.[0] ?? 0;
  for (const step of path) {
    if (isMap(node)) {
      const pair = node.items.find(
        (item) => isPair(item) && isScalar(item.key) && String(item.key.value) === step,
      );
      if (pair === undefined) return { node, offset, whole: false };
      offset = (pair.key as ParsedNode).range[0];
      node = pair.value;
    } else if (isSeq(node) && typeof step === 'number') {
      const item = node.items[step];
      if (item === undefined) return { node, offset, whole: false };
      offset = (item as ParsedNode).range?.[0] ?? offset;
      node = item;
    } else {
      return { node, offset, whole: false };
    }
  }
  return { node, offset, whole: true };
}

/** Reads YAML text; `lineBefore` lines of the file come before it. */
function takeYaml(file: string, text: string, body: string, lineBefore: number): Taken {
  const lines = new LineCounter();
  const document = parseDocument(text, { lineCounter: lines, prettyErrors: false });
  const lineAt = (offset: number): number => Math.max(1, lines.linePos(offset).line) + lineBefore;
  if (document.errors.length > 0) {
    return {
      source: null,
      problems: document.errors.map((error) => ({
        file,
        line: lineAt(error.pos[0]),
        field: '',
        error: { code: 'yaml', why: error.message.replace(/[.:\s]+$/, '') },
      })),
    };
  }
  return {
    source: {
      file,
      // A bomb of aliases ends here, before it unfolds.
      data: document.toJS({ maxAliasCount: 100 }),
      body,
      lineOf: (path) => lineAt(follow(document, path).offset),
      remarkAt: (path) => {
        const { node, whole } = follow(document, path);
        return whole && isScalar(node) && node.value === null && typeof node.comment === 'string';
      },
    },
    problems: [],
  };
}

/** The heading block of a Markdown file and what follows it. */
const headed = /^---\r?\n([\s\S]*?)\r?\n---[ \t]*(?:\r?\n|$)([\s\S]*)$/;

/** Reads one file of the content folder, YAML or Markdown by its ending. */
export function take(folder: string, file: string): Taken {
  let text: string;
  try {
    text = readFileSync(join(folder, file), 'utf8').replace(/^\uFEFF/, '');
  } catch (error) {
    const why = error instanceof Error && 'code' in error ? String(error.code) : 'unknown';
    return { source: null, problems: [problemOfFile(file, { code: 'file-unreadable', why })] };
  }
  if (!file.endsWith('.md')) return takeYaml(file, text, '', 0);
  const [, head, body] = headed.exec(text) ?? [];
  if (head === undefined || body === undefined) {
    return { source: null, problems: [problemOfFile(file, { code: 'front-matter' })] };
  }
  return takeYaml(file, head, body.trim(), 1);
}
