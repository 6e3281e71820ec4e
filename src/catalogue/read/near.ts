/** The known name that a mistyped one was meant to be. */

/** Single-letter changes from one word to the other (Levenshtein's distance). */
function distance(one: string, other: string): number {
  let row = Array.from({ length: other.length + 1 }, (_, index) => index);
  for (let i = 1; i <= one.length; i += 1) {
    const next = [i];
    for (let j = 1; j <= other.length; j += 1) {
      const same = one[i - 1] === other[j - 1] ? 0 : 1;
      next.push(Math.min((row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1, (row[j - 1] ?? 0) + same));
    }
    row = next;
  }
  return row[other.length] ?? 0;
}

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
