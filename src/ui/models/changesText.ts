/** What a size changes in a piece, in words. */
import type { Design } from '#core/design/design.ts';
import { formatLength } from '#words/format.ts';
import type { Lang } from '#words/lang.ts';
import { pageWords } from '#words/words.ts';
import type { SizeRow } from './sizeRows.ts';

/** Components added or left out against the piece as shown, all sections together. */
export function changesText({ candidate, within }: SizeRow, design: Design, lang: Lang): string {
  const words = pageWords(lang).piece;
  const sums = new Map<string, number>();
  for (const { component, count } of candidate.changes.flatMap(({ parts }) => parts)) {
    sums.set(component, (sums.get(component) ?? 0) + count);
  }
  const changed = [...sums]
    .filter(([, count]) => count !== 0)
    .map(([id, count]) => words.change(count, design.components[id]?.name ?? id));
  const text = changed.length === 0 ? words.usual : changed.join('; ');
  if (within) return text;
  return `${text} (${words.offBy(formatLength(Math.abs(candidate.errorMm), 'mm', lang))})`;
}
