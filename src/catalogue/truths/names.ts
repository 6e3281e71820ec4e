/** No two entries share a short name, and no two that a buyer sees share a name. */
import type { Entry } from '../read/entry.ts';
import type { Problem } from '../read/problem.ts';

type Named = Entry<{ readonly name: string }>;

/** Names are alike for a reader whatever their capitals and spaces. */
const asRead = (name: string): string => name.toLowerCase().replace(/\s+/g, ' ');

/** Complains about each entry whose short name or name came before. */
export function assertOwnNames(entries: readonly Named[]): Problem[] {
  const ids = new Map<string, string>();
  const names = new Map<string, string>();
  return entries.flatMap((entry) => {
    const problems: Problem[] = [];
    const name = asRead(entry.value.name);
    const sameId = ids.get(entry.id);
    const sameName = names.get(name);
    if (sameId !== undefined)
      problems.push(entry.complain([], 'duplicate-id', { id: entry.id, other: sameId }));
    if (sameName !== undefined) {
      problems.push(entry.complain(['name'], 'duplicate-name', { name: entry.value.name, other: sameName }));
    }
    ids.set(entry.id, sameId ?? entry.place);
    names.set(name, sameName ?? entry.place);
    return problems;
  });
}
