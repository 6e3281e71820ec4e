/** The known name that a mistyped one was meant to be. */
import { distance } from 'fastest-levenshtein';

// Above one letter in three the guess is more likely wrong than right.
const slipsPerLetter = 1 / 3;
// A pasted paragraph isn't a mistyped name, and comparing it costs time.
const longestName = 60;

/** The nearest of `known`, or an empty text where none is near. */
export function near(written: string, known: Iterable<string>): string {
  if (written.length > longestName) return '';
  let best = '';
  let least = Math.max(1, Math.floor(written.length * slipsPerLetter)) + 1;
  for (const name of known) {
    if (Math.abs(name.length - written.length) >= least) continue;
    const edits = distance(written, name);
    if (edits < least) [best, least] = [name, edits];
  }
  return best;
}
