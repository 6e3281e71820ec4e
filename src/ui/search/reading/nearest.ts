/** The word that a mistyped one was meant to be. */
import { distance } from 'fastest-levenshtein';
import type { Candidate, Opened, Sense } from './open.ts';

/** Slips that a word of so many letters may have: with more, a guess is more likely wrong than right. */
function mostSlips(letters: number): number {
  if (letters < 4) return 0;
  if (letters < 6) return 1;
  return 2;
}

/** Longer than any word that is looked for; comparing a pasted line costs time. */
const LONGEST = 40;

const letters = (word: string): string => [...word].sort().join('');

/** Slips from one word to the other; two letters that changed places are one slip. */
function slips(one: string, other: string): number {
  const edits = distance(one, other);
  return edits === 2 && one.length === other.length && letters(one) === letters(other) ? 1 : edits;
}

const rank: Readonly<Record<Sense['as'], number>> = { concept: 0, role: 1, word: 2 };

/** The nearest that the shop knows; null where none is near. What can be asked for goes before words of the texts. */
export function nearest(key: string, { candidates }: Opened): Candidate | null {
  const most = mostSlips(key.length);
  if (most === 0 || key.length > LONGEST || /\d/.test(key)) return null;
  let best: Candidate | null = null;
  let least = most + 1;
  for (const candidate of candidates) {
    const { key: other } = candidate;
    // A short word with another first letter is another word.
    if (other.length < 4 || (key.length < 6 && other[0] !== key[0])) continue;
    if (Math.abs(other.length - key.length) > most) continue;
    // In a short word another letter makes another word; one left out or doubled is a slip.
    const replaced = other.length === key.length && letters(other) !== letters(key);
    if (replaced && (key.length < 5 || (key.length < 6 && candidate.sense.as === 'word'))) continue;
    const found = slips(key, other) + (other[0] === key[0] ? 0 : 0.5) + rank[candidate.sense.as] / 10;
    if (found < least) [best, least] = [candidate, found];
  }
  return best;
}
