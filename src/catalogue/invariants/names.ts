/** No two entries share a short name, no two that a buyer sees a name, and no two bags a part number. */
import type { Entry } from '../read/entry.ts';
import type { Problem } from '../read/problem.ts';

type Named = Entry<{ readonly name: string }>;

/** Names are alike for a reader whatever their capitals and spaces. */
const asRead = (name: string): string => name.toLowerCase().replace(/\s+/g, ' ');

/** Problems of each entry whose short name or name came before. */
export function assertOwnNames(entries: readonly Named[]): Problem[] {
  const ids = new Map<string, string>();
  const names = new Map<string, string>();
  return entries.flatMap((entry) => {
    const problems: Problem[] = [];
    const name = asRead(entry.value.name);
    const sameId = ids.get(entry.id);
    const sameName = names.get(name);
    if (sameId !== undefined)
      problems.push(entry.problemAt([], { code: 'duplicate-id', id: entry.id, other: sameId }));
    if (sameName !== undefined) {
      problems.push(
        entry.problemAt(['name'], { code: 'duplicate-name', name: entry.value.name, other: sameName }),
      );
    }
    ids.set(entry.id, sameId ?? entry.place);
    names.set(name, sameName ?? entry.place);
    return problems;
  });
}

type Numbered = Entry<{ readonly 'part-number'?: string | undefined }>;

/** Problems of each component or wire whose part number came before: a bag holds one thing. */
export function assertOwnNumbers(entries: readonly Numbered[]): Problem[] {
  const places = new Map<string, string>();
  return entries.flatMap((entry) => {
    const number = entry.value['part-number'];
    if (number === undefined) return [];
    const key = asRead(number);
    const other = places.get(key);
    places.set(key, other ?? entry.place);
    return other === undefined
      ? []
      : [entry.problemAt(['part-number'], { code: 'duplicate-part-number', number, other })];
  });
}
