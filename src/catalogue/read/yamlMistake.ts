/** What the YAML reader stumbled over, in a maker's terms. */
import { isMap, isScalar, visit, type Document, type YAMLError } from 'yaml';
import type { CatalogueError } from '#words/catalogueCodes.ts';

export type YamlMistake = { readonly offset: number; readonly error: CatalogueError };

/** More fields than any file of a shop has. */
export const MOST_FIELDS = 8000;

/** The first mistake alone: what follows one is mostly told because of it. */
export function firstMistake(text: string, errors: readonly YAMLError[]): YamlMistake | null {
  const [first] = [...errors].sort((one, other) => one.pos[0] - other.pos[0]);
  if (first === undefined) return null;
  const tab = /^[ \t]*\t/m.exec(text);
  if (first.code === 'TAB_AS_INDENT' || (tab !== null && tab.index <= first.pos[0])) {
    return { offset: tab?.index ?? first.pos[0], error: { code: 'tab-indent' } };
  }
  const offset = first.pos[0];
  if (first.code === 'BLOCK_AS_IMPLICIT_KEY' && /:\s.*:\s/.test(lineRound(text, offset))) {
    return { offset, error: { code: 'colon-inside' } };
  }
  // The reader goes one call deeper for every bracket.
  if (first.message.includes('call stack')) return { offset, error: { code: 'yaml-references' } };
  return { offset, error: { code: 'yaml', why: first.message.replace(/[.:\s]+$/, '') } };
}

function lineRound(text: string, offset: number): string {
  const start = text.lastIndexOf('\n', offset - 1) + 1;
  const end = text.indexOf('\n', offset);
  return `${text.slice(start, end < 0 ? undefined : end)}\n`;
}

/**
 * Fields written twice, or more of them than can be. The YAML library looks for
 * doubles by comparing each with all, which takes minutes for a pasted export.
 */
export function fieldMistake(document: Document.Parsed): YamlMistake | null {
  let mistake: YamlMistake | null = null;
  let count = 0;
  visit(document, {
    Map: (_, map) => {
      if (!isMap(map)) return undefined;
      const seen = new Set<unknown>();
      for (const { key } of map.items) {
        count += 1;
        const offset = isScalar(key) ? (key.range?.[0] ?? 0) : 0;
        const name = isScalar(key) ? key.value : key;
        if (count > MOST_FIELDS) mistake = { offset, error: { code: 'too-many-fields', most: MOST_FIELDS } };
        else if (seen.has(name)) mistake = { offset, error: { code: 'field-twice', field: String(name) } };
        if (mistake !== null) return visit.BREAK;
        seen.add(name);
      }
      return undefined;
    },
  });
  return mistake;
}
