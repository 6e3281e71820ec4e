/** Short names of strands and sections, made of what the maker calls them. */

/** A short name made of a written one; two alike are told apart by a number. `taken` gets it too. */
export function shortName(name: string, taken: Set<string>): string {
  const plain =
    name
      .normalize('NFD')
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, '-')
      .replace(/^-|-$/g, '') || 'section';
  let id = plain;
  for (let number = 2; taken.has(id); number += 1) id = `${plain}-${number}`;
  taken.add(id);
  return id;
}

/** Section of what stands at the ends of a strand as laid out: no section of the maker's may be called so. */
const RESERVED = 'end';

/** Ids that no section of a strand may take, to begin with. */
export const takenInStrand = (): Set<string> => new Set([RESERVED]);
