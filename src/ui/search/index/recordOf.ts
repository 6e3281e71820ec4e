/** Reads from a built page what its piece is found by. */
import type { FindRecord } from '../findRecord.ts';

const MARK = /<div hidden(?:="")? data-find="([^"]*)"/;
const ENTITIES: Readonly<Record<string, string>> = {
  '&quot;': '"',
  '&#34;': '"',
  '&#38;': '&',
  '&amp;': '&',
  '&#39;': "'",
  '&lt;': '<',
  '&gt;': '>',
};

/** @returns null for a page that isn't a piece's */
export function recordOf(html: string): FindRecord | null {
  const text = MARK.exec(html)?.[1];
  if (text === undefined) return null;
  const plain = text.replace(/&(?:#\d+|[a-z]+);/g, (entity) => ENTITIES[entity] ?? entity);
  return JSON.parse(plain) as FindRecord;
}
