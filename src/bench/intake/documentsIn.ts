/** Order documents that were copied into a letter as they are saved, JSON among other words. */
import { readDocument } from '#order/migrate.ts';
import { MOST_BYTES } from '../http/readBody.ts';
import type { OrderRead } from './orderRead.ts';

/** A document names its format first. */
const BEGUN = /\{\s*"format"\s*:\s*"claspwise-order"/g;
/** What stands before a line without being part of it: quote marks, and indents of any width. */
const BEFORE_LINE = /^[\s>|]+/gm;

/** Every document in a text, `most` at the utmost; one that was changed on its way is damaged. */
export function documentsIn(text: string, most: number): OrderRead[] {
  const plain = text.replace(BEFORE_LINE, '');
  return [...plain.matchAll(BEGUN)].slice(0, most).map(({ index }) => {
    try {
      return readDocument(JSON.parse(firstObject(plain.slice(index, index + MOST_BYTES))) as unknown);
    } catch {
      return { ok: false, problem: { code: 'damaged' } };
    }
  });
}

/** The object at the beginning of a text; braces within its texts don't count. */
function firstObject(text: string): string {
  let depth = 0;
  for (const { 0: token, index } of text.matchAll(/"(?:[^"\\]|\\.)*"|[{}]/g)) {
    if (token === '{') depth += 1;
    if (token === '}') depth -= 1;
    if (depth === 0) return text.slice(0, index + 1);
  }
  return text;
}
