/** A piece's whole name that is mistyped: "Tihe Table", "Bankd Fie". */
import { distance } from 'fastest-levenshtein';
import type { PieceName } from './open.ts';

/** Letters from which a name may have one slip more. */
const SLIPS_FROM = [4, 7, 11];

/** Like slips of the key: two letters that changed places are one. */
function slipsIn(key: string, other: string): number {
  const edits = distance(key, other);
  const isMoved = edits > 1 && [...key].sort().join('') === [...other].sort().join('');
  return isMoved ? edits - 1 : edits;
}

/** The nearest name; null where none is near. @param key folded words without space between */
export function mistypedName(key: string, names: readonly PieceName[]): PieceName | null {
  let best: PieceName | null = null;
  let least = Infinity;
  for (const name of names) {
    const letters = Math.min(key.length, name.key.length);
    const most = Math.min(least - 1, SLIPS_FROM.filter((from) => letters >= from).length);
    if (name.key[0] !== key[0] || Math.abs(name.key.length - key.length) > most) continue;
    const slips = slipsIn(key, name.key);
    if (slips <= most) [best, least] = [name, slips];
  }
  return best;
}
