/** An authored file taken in: its data, and the line that each field stands on. */
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
import type { CatalogueError } from '#words/catalogueCodes.ts';
import { fileText } from './fileText.ts';
import type { Folder } from './folder.ts';
import { remembered } from './memory.ts';
import { problemOfFile, type FieldPath, type Problem } from './problem.ts';
import { fieldMistake, firstMistake } from './yamlMistake.ts';

export type Source = {
  /** Path within the content folder. */
  readonly file: string;
  readonly data: unknown;
  /** Text after the heading block; empty for plain YAML. */
  readonly body: string;
  /** Line that the body begins on, from 1. */
  readonly bodyLine: number;
  /** Line of a field, or of the nearest thing round it that is there. From 1. */
  readonly lineOf: (path: FieldPath) => number;
  /** True where the value was swallowed by a remark: `colour: #4a5866`. */
  readonly remarkAt: (path: FieldPath) => boolean;
};

export type Taken =
  | { readonly source: Source; readonly problems: readonly [] }
  | { readonly source: null; readonly problems: readonly Problem[] };

type Body = Pick<Source, 'body' | 'bodyLine'>;
const NO_BODY: Body = { body: '', bodyLine: 1 };

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

/** What the document says; a mistake where its references have no end or nothing behind them. */
function dataOf(
  document: Document.Parsed,
): { readonly data: unknown } | { readonly code: 'yaml-references' } {
  try {
    // A bomb of references ends here, before it unfolds.
    return { data: document.toJS({ maxAliasCount: 100 }) as unknown };
  } catch {
    return { code: 'yaml-references' };
  }
}

type Parsed = {
  readonly document: Document.Parsed;
  /** Line of the text, from 1. */
  readonly lineAt: (offset: number) => number;
};

function parsed(text: string): Parsed {
  const lines = new LineCounter();
  const document = parseDocument(text, { lineCounter: lines, prettyErrors: false, uniqueKeys: false });
  return { document, lineAt: (offset) => Math.max(1, lines.linePos(offset).line) };
}

/** Reads YAML text; `lineBefore` lines of the file come before it. */
function takeYaml(file: string, text: string, { body, bodyLine }: Body, lineBefore: number): Taken {
  const { document, lineAt } = parsed(text);
  const refused = (offset: number, error: CatalogueError): Taken => {
    return { source: null, problems: [{ file, line: lineAt(offset) + lineBefore, field: '', error }] };
  };
  const mistake = firstMistake(text, document.errors) ?? fieldMistake(document);
  if (mistake !== null) return refused(mistake.offset, mistake.error);
  const read = dataOf(document);
  if ('code' in read) return refused(Math.max(0, text.search(/\*[\w-]/)), read);
  // Lines are asked for where something is wrong: a source that is remembered holds its text alone, a tenth of its tree.
  const held = new WeakRef({ document, lineAt });
  const tree = (): Parsed => held.deref() ?? parsed(text);
  return {
    source: {
      file,
      data: read.data,
      body,
      bodyLine,
      lineOf: (path) => {
        const now = tree();
        return now.lineAt(follow(now.document, path).offset) + lineBefore;
      },
      remarkAt: (path) => {
        const { node, whole } = follow(tree().document, path);
        return whole && isScalar(node) && node.value === null && typeof node.comment === 'string';
      },
    },
    problems: [],
  };
}

/** The heading block of a Markdown file and what follows it. */
export const headed = /^---\r?\n([\s\S]*?)\r?\n---[ \t]*(?:\r?\n|$)([\s\S]*)$/;

/** Reads one file of the content folder, YAML or Markdown by its ending. */
export function take(folder: Folder, file: string): Taken {
  const { text, problem } = fileText(folder, file);
  if (text === null) return { source: null, problems: [problem] };
  return remembered(folder.memory, `file ${file}`, [text], () => takeText(file, text));
}

function takeText(file: string, text: string): Taken {
  if (!file.endsWith('.md')) return takeYaml(file, text, NO_BODY, 0);
  const [, head, body] = headed.exec(text) ?? [];
  if (head === undefined || body === undefined) {
    return { source: null, problems: [problemOfFile(file, { code: 'front-matter' })] };
  }
  const written = body.trimStart();
  const linesBefore = text.slice(0, text.length - written.length).split('\n').length - 1;
  return takeYaml(file, head, { body: written.trimEnd(), bodyLine: linesBefore + 1 }, 1);
}
