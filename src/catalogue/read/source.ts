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
import type { Said } from './said.ts';
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

type Written = Body & {
  readonly file: string;
  /** What is YAML of it. */
  readonly text: string;
  /** Lines of the file before that. */
  readonly lineBefore: number;
};

/**
 * A source of what a text says. Lines are asked for where something is wrong: it holds its text alone, a tenth of its
 * tree, and that as long as nobody needs the room.
 */
function sourceOf(written: Written, data: unknown, taken: Parsed | null): Taken {
  const { file, text, body, bodyLine, lineBefore } = written;
  let held = taken === null ? null : new WeakRef(taken);
  const tree = (): Parsed => {
    const now = held?.deref() ?? parsed(text);
    held = new WeakRef(now);
    return now;
  };
  return {
    source: {
      file,
      data,
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

function takeYaml(written: Written, said: Said | undefined): Taken {
  const { file, text, lineBefore } = written;
  const known = said?.of(text);
  if (known) return sourceOf(written, known.data, null);
  const { document, lineAt } = parsed(text);
  const refused = (offset: number, error: CatalogueError): Taken => {
    return { source: null, problems: [{ file, line: lineAt(offset) + lineBefore, field: '', error }] };
  };
  const mistake = firstMistake(text, document.errors) ?? fieldMistake(document);
  if (mistake !== null) return refused(mistake.offset, mistake.error);
  const read = dataOf(document);
  if ('code' in read) return refused(Math.max(0, text.search(/\*[\w-]/)), read);
  said?.note(text, read.data);
  return sourceOf(written, read.data, { document, lineAt });
}

/** The heading block of a Markdown file and what follows it. */
export const headed = /^---\r?\n([\s\S]*?)\r?\n---[ \t]*(?:\r?\n|$)([\s\S]*)$/;

/** Reads one file of the content folder, YAML or Markdown by its ending. */
export function take(folder: Folder, file: string): Taken {
  const { text, problem } = fileText(folder, file);
  if (text === null) return { source: null, problems: [problem] };
  return remembered(folder.memory, `file ${file}`, [text], () => takeText(file, text, folder.said));
}

function takeText(file: string, text: string, said: Said | undefined): Taken {
  if (!file.endsWith('.md')) return takeYaml({ file, text, ...NO_BODY, lineBefore: 0 }, said);
  const [, head, body] = headed.exec(text) ?? [];
  if (head === undefined || body === undefined) {
    return { source: null, problems: [problemOfFile(file, { code: 'front-matter' })] };
  }
  const written = body.trimStart();
  const linesBefore = text.slice(0, text.length - written.length).split('\n').length - 1;
  const heading = { file, text: head, body: written.trimEnd(), bodyLine: linesBefore + 1, lineBefore: 1 };
  return takeYaml(heading, said);
}
