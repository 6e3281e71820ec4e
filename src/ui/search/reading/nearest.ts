/** The word that a mistyped one was meant to be. */
import { distance } from 'fastest-levenshtein';
import { soundOf } from './fold.ts';
import { COMPARING, type Candidate, type Opened, type Sense } from './open.ts';

/** Slips that a word of so many letters may have: with more, a guess is more likely wrong than right. */
const mostSlips = (letters: number): number => (letters < 7 ? 1 : 2);

/** Letters from which a word that sounds the same may have a slip more. */
const LEAST_HEARD = 5;

/** Longer than any word that is looked for; comparing a pasted line costs time. */
const LONGEST = 40;

const letters = (word: string): string => [...word].sort().join('');

/** Less than any further slip: of two that are as near, what is meant more often. */
const RANK: Readonly<Record<Sense['as'], number>> = { concept: 0, role: 0.1, word: 0.2 };
const SOUNDS_ALIKE = 0.4;
const CHANGED_PLACES = 0.1;

const compares = ({ sense }: Candidate): boolean => sense.as === 'role' && COMPARING.includes(sense.role);

/** How far a candidate is from what was typed; null where it is another word. */
function farFrom(
  key: string,
  heard: string,
  { key: other, written, sound, sense, isForeign }: Candidate,
): number | null {
  if (written.length < 4) return null;
  const least = Math.min(key.length, other.length);
  const alike = sound === heard && least >= LEAST_HEARD;
  const sameStart = other[0] === key[0];
  // A word with another first letter is another word, unless it is a long one with nothing else amiss.
  if (!sameStart && key.length < 6) return null;
  const most = sameStart ? (isForeign ? 1 : mostSlips(least)) + (alike ? 1 : 0) : 1;
  if (Math.abs(other.length - key.length) > most) return null;
  const isMoved = other.length === key.length && letters(other) === letters(key);
  // In a short word another letter makes another word; one left out or doubled is a slip.
  const isReplaced = other.length === key.length && !isMoved;
  if (isReplaced && (key.length < 5 || (key.length < 6 && sense.as === 'word' && !alike))) return null;
  const edits = distance(key, other);
  // Two letters that changed places are one slip.
  const slips = isMoved && edits === 2 ? 1 : edits;
  if (slips > most) return null;
  return (
    slips +
    (sameStart ? 0 : 0.5) +
    RANK[sense.as] -
    (alike ? SOUNDS_ALIKE : 0) -
    (isMoved ? CHANGED_PLACES : 0)
  );
}

/** The same again for the same word: typing on asks for each word many times. */
const found = new WeakMap<Opened, Map<string, Nearest | null>>();
const MOST_KEPT = 500;

export type Nearest = Candidate & { readonly far: number };

/**
 * The nearest that the shop knows; null where none is near. What can be asked for goes before words of the texts,
 * and of two that are equally near, what sounds the same.
 * @param beforeFigure true where a figure follows: then it may be a word that compares
 */
export function nearest(key: string, opened: Opened, beforeFigure = false): Nearest | null {
  if (key.length < 4 || key.length > LONGEST || /\d/.test(key)) return null;
  const known = found.get(opened) ?? new Map<string, Nearest | null>();
  found.set(opened, known);
  const name = `${key} ${beforeFigure}`;
  const before = known.get(name);
  if (before !== undefined) return before;
  const heard = soundOf(key);
  let best: Nearest | null = null;
  for (const candidate of opened.candidates) {
    if (compares(candidate) && !beforeFigure) continue;
    const far = farFrom(key, heard, candidate);
    if (far !== null && far < (best?.far ?? Infinity)) best = { ...candidate, far };
  }
  if (known.size >= MOST_KEPT) known.clear();
  known.set(name, best);
  return best;
}
