/** One value as YAML text, such that the schemas read it as it was meant. */
import { isMap, isScalar, isSeq, parseDocument } from 'yaml';
import type { Scalar } from './plain.ts';

/** How a value was written before, which its successor keeps where it can. */
export type Style = 'plain' | 'single' | 'double' | 'folded' | 'literal';

/** Where the value will stand. */
export type Spot = {
  /** Within brackets or braces, where it can't take lines of its own. */
  readonly flow: boolean;
  /** Indentation of lines of its own. */
  readonly indent: number;
  /** Column that it begins in. */
  readonly column: number;
  /** Column that folded lines end before. */
  readonly width: number;
};

/** Text behind the field's name, and lines that follow. */
export type Written = { readonly head: string; readonly lines: readonly string[] };

/** A line longer than this is folded when it is written anew. */
export const LONGEST_LINE = 110;

const inline = (head: string): Written => ({ head, lines: [] });

/** Texts in which a plain value has to come out as itself. */
const BLOCK_PROBES = [(text: string) => `k: ${text}`, (text: string) => `- ${text}`] as const;
const FLOW_PROBES = [(text: string) => `{ k: ${text}, z: 1 }`, (text: string) => `[${text}, z]`] as const;

/** True where YAML reads `text` without quotes as this text, or as a number or truth that is spelt alike. */
function readsPlain(probe: string, text: string, items: number): boolean {
  const { contents, errors } = parseDocument(probe, { prettyErrors: false, logLevel: 'silent' });
  if (errors.length > 0 || !(isMap(contents) || isSeq(contents)) || contents.items.length !== items)
    return false;
  const node: unknown = isMap(contents) ? contents.get('k', true) : contents.items[0];
  return (
    isScalar(node) &&
    node.type === 'PLAIN' &&
    node.value !== null &&
    node.comment === undefined &&
    node.anchor === undefined &&
    node.tag === undefined &&
    String(node.value) === text
  );
}

function canBePlain(text: string, flow: boolean): boolean {
  if (text === '' || /[\n\r\t]/.test(text)) return false;
  const probes = flow ? FLOW_PROBES : BLOCK_PROBES;
  return probes.every((probe) => readsPlain(probe(text), text, flow ? 2 : 1));
}

function quoted(text: string, style: Style | null): string {
  // Signs that don't show, and line breaks, exist as escapes only.
  if (style === 'double' || /[\p{Cc}\u2028\u2029\ufeff]/u.test(text)) return JSON.stringify(text);
  return `'${text.replaceAll("'", "''")}'`;
}

/** Words of one paragraph on lines of at most `room`; a word that is longer stands by itself. */
function wrapped(paragraph: string, room: number): string[] {
  const lines: string[] = [];
  let line = '';
  // Between two spaces no line may end: the fold would read as one space.
  for (const word of paragraph.split(/(?<=\S) (?=\S)/)) {
    if (line !== '' && line.length + 1 + word.length > room) {
      lines.push(line);
      line = word;
    } else {
      line = line === '' ? word : `${line} ${word}`;
    }
  }
  return [...lines, line];
}

/** The lines of a folded text: a line break in it is an empty line more. */
function folded(text: string, room: number): string[] {
  return text.split(/(\n+)/).flatMap((part) => {
    if (!part.startsWith('\n')) return wrapped(part, room);
    return Array<string>(part.length).fill('');
  });
}

/** Lines of its own, folded or as they are; null where YAML can't hold the text so. */
function blockText(text: string, style: Style | null, { indent, width }: Spot): Written | null {
  const body = text.replace(/\n$/, '');
  if (body === '' || /^[\s]|[\r\t]|\n$/.test(body)) return null;
  const chomp = body === text ? '-' : '';
  const pad = ' '.repeat(indent);
  const asIs = style === 'literal' || /\n[ ]|[ ](?:\n|$)/.test(body);
  const lines = asIs ? body.split('\n') : folded(body, Math.max(20, width - indent));
  return {
    head: `${asIs ? '|' : '>'}${chomp}`,
    lines: lines.map((line) => (line === '' ? '' : pad + line)),
  };
}

function textOf(text: string, style: Style | null, spot: Spot): Written {
  const long = spot.column + text.length > LONGEST_LINE && text.includes(' ');
  if (!spot.flow && (style === 'folded' || style === 'literal' || text.includes('\n') || long)) {
    const block = blockText(text, style, spot);
    if (block !== null) return block;
  }
  if (style !== 'single' && style !== 'double' && canBePlain(text, spot.flow)) return inline(text);
  return inline(quoted(text, style));
}

/** A value as text. `style`: as it was written before, null for a new one. */
export function scalarText(value: Scalar, style: Style | null, spot: Spot): Written {
  if (value === null) return inline('null');
  if (typeof value === 'boolean') return inline(value ? 'yes' : 'no');
  if (typeof value === 'number') return inline(String(value));
  return textOf(value.replaceAll(/\r\n?/g, '\n'), style, spot);
}

/** A field's name, in quotes where YAML would take it for something else. */
export function keyText(name: string): string {
  const { contents, errors } = parseDocument(`${name}: 1`, { prettyErrors: false, logLevel: 'silent' });
  const key = isMap(contents) && contents.items.length === 1 ? contents.items[0]?.key : null;
  const plain = errors.length === 0 && isScalar(key) && key.type === 'PLAIN' && String(key.value) === name;
  return plain ? name : quoted(name, null);
}
