/** No two entries share a short name, no two that a buyer sees a name, and no two bags a part number. */
import type { Entry } from '../read/entry.ts';
import type { Problem } from '../read/problem.ts';

type Named = Entry<{ readonly name: string }>;

/** Names are alike for a reader whatever their capitals and spaces. */
const asRead = (name: string): string => name.toLowerCase().replace(/\s+/g, ' ');

/** Problems of each entry whose short name or name came before. */
export function assertOwnNames(entries: readonly Named[]): Problem[] {
  // Entries, not places: to know the place of one, its file is taken apart.
  const ids = new Map<string, Named>();
  const names = new Map<string, Named>();
  return entries.flatMap((entry) => {
    const problems: Problem[] = [];
    const name = asRead(entry.value.name);
    const sameId = ids.get(entry.id);
    const sameName = names.get(name);
    if (sameId !== undefined)
      problems.push(entry.problemAt([], { code: 'duplicate-id', id: entry.id, other: sameId.place }));
    if (sameName !== undefined) {
      problems.push(
        entry.problemAt(['name'], { code: 'duplicate-name', name: entry.value.name, other: sameName.place }),
      );
    }
    ids.set(entry.id, sameId ?? entry);
    names.set(name, sameName ?? entry);
    return problems;
  });
}

type Numbered = Entry<{ readonly 'part-number'?: string | undefined }>;

/** Problems of each component or wire whose part number came before: a bag holds one thing. */
export function assertOwnNumbers(entries: readonly Numbered[]): Problem[] {
  const first = new Map<string, Numbered>();
  return entries.flatMap((entry) => {
    const number = entry.value['part-number'];
    if (number === undefined) return [];
    const key = asRead(number);
    const other = first.get(key);
    first.set(key, other ?? entry);
    return other === undefined
      ? []
      : [entry.problemAt(['part-number'], { code: 'duplicate-part-number', number, other: other.place })];
  });
}
