/** Takes a query apart into words and amounts, each with what it stands for. */
import { amountAt, type Amount } from './amounts.ts';
import { fold, WORD } from './fold.ts';
import { nearest } from './nearest.ts';
import type { Candidate, Opened, Sense } from './open.ts';
import { mendedParts, partsOf } from './parts.ts';
import type { Place } from './reading.ts';

export type Item = {
  readonly at: Place;
  /** As it was written. */
  readonly text: string;
  /** What it stands for: several for words written together; none for what nothing holds. */
  readonly senses: readonly Sense[];
  readonly amount: Amount | null;
  /** A seed bead's size such as 11/0. */
  readonly seed: string | null;
  /** What it was put right to. */
  readonly corrected: string | null;
};

type Token = { readonly text: string; readonly key: string; readonly at: Place };

/** A query says no more than this in words; what a pasted page says beyond is left. */
const MOST_TOKENS = 32;
/** The longest name is said in so many words. */
const MOST_NAME = 8;
/** Letters from which the beginning of a word says which is meant. */
const LEAST_BEGUN = 4;
const SEED = /(?<![\p{L}\p{N}])\d{1,2}\/0(?![\p{L}\p{N}])/uy;

function tokensOf(text: string): Token[] {
  return [...text.matchAll(WORD)].slice(0, MOST_TOKENS).flatMap((match) => {
    const [word] = match;
    const key = fold(word);
    return key === '' ? [] : [{ text: word, key, at: [match.index, match.index + word.length] as const }];
  });
}

/** The word of the texts, or the name, that a word begins. */
function begun(key: string, { candidates }: Opened): { sense: Sense; written: string } | null {
  if (key.length < LEAST_BEGUN) return null;
  const able = candidates.filter(({ key: other }) => other.startsWith(key));
  const [first] = able.sort(
    (one, other) =>
      Number(one.sense.as === 'word') - Number(other.sense.as === 'word') ||
      one.key.length - other.key.length,
  );
  return first ?? null;
}

/**
 * @param live the last word may still be being written
 */
export function itemsOf(text: string, opened: Opened, live: boolean): readonly Item[] {
  const tokens = tokensOf(text);
  const known = (key: string): Sense | null => opened.sense(key) ?? opened.word(key) ?? opened.loose(key);
  const exactly = (key: string): boolean => opened.word(key, true) !== null;
  const items: Item[] = [];
  let next = 0;
  const take = (count: number, more: Partial<Omit<Item, 'at' | 'text'>>): void => {
    const from = tokens[next]?.at[0] ?? 0;
    const to = tokens[next + count - 1]?.at[1] ?? from;
    const rest = { senses: [], amount: null, seed: null, corrected: null, ...more };
    items.push({ at: [from, to], text: text.slice(from, to), ...rest });
    next += count;
  };

  while (next < tokens.length) {
    const token = tokens[next];
    if (token === undefined) break;
    if (takeParted(token) || takeName(token) || takeFigure(token)) continue;
    takeWord(token);
  }
  return items;

  /** Names of pieces, of what can be asked for and of roles, the longest first. */
  function takeName(token: Token): boolean {
    for (let count = Math.min(MOST_NAME, tokens.length - next); count >= 1; count -= 1) {
      const said = tokens.slice(next, next + count);
      const key = said.map((one) => one.key).join('');
      const name = opened.name(key);
      if (name !== null) {
        take(count, { senses: name });
        return true;
      }
      if (count === 1 && /^\d+$/.test(key) && amountAt(text, token.at[0])?.of !== 'number') return false;
      const sense = opened.sense(key);
      if (sense !== null) {
        take(count, { senses: [sense] });
        return true;
      }
    }
    return false;
  }

  function takeFigure(token: Token): boolean {
    const from = /[£€$]\s?$/u.exec(text.slice(0, token.at[0]))?.index ?? token.at[0];
    SEED.lastIndex = token.at[0];
    const seed = SEED.exec(text)?.[0] ?? null;
    const end = seed === null ? 0 : SEED.lastIndex;
    const amount = seed === null && /^[\d£€$¼½¾]/u.test(text.slice(from)) ? amountAt(text, from) : null;
    const to = amount?.end ?? end;
    if (to === 0) return false;
    const count = tokens.slice(next).filter(({ at }) => at[0] < to).length;
    items.push({ at: [from, to], text: text.slice(from, to), senses: [], amount, seed, corrected: null });
    next += Math.max(1, count);
    return true;
  }

  /** A word of the texts that was written in two. */
  function takeParted({ key }: Token): boolean {
    const after = tokens[next + 1];
    const joined = after === undefined ? null : opened.word(key + after.key, true);
    if (after === undefined || joined === null || (exactly(key) && exactly(after.key))) return false;
    take(2, { senses: [joined] });
    return true;
  }

  function farOff(key: string): Pick<Candidate, 'sense' | 'written'> | null {
    const written = opened.slip(key);
    const sense = written === null ? null : opened.sense(opened.keyOf(written));
    return written === null || sense === null ? null : { sense, written };
  }

  function takeWord({ key }: Token): void {
    // A letter by itself says nothing.
    if (key.length === 1) {
      next += 1;
      return;
    }
    const sense = opened.slip(key) === null ? known(key) : null;
    if (sense !== null) {
      take(1, { senses: [sense] });
      return;
    }
    const writing = live && next === tokens.length - 1;
    if (writing && key.length < LEAST_BEGUN) {
      next += 1;
      return;
    }
    const beginning = begun(key, opened);
    if (beginning !== null && writing) {
      take(1, { senses: [beginning.sense] });
      return;
    }
    const parts = partsOf(key, opened);
    if (parts !== null) {
      take(1, { senses: parts });
      return;
    }
    const meant = farOff(key) ?? nearest(key, opened);
    const mended = meant === null ? mendedParts(key, opened) : null;
    const guess = meant ?? beginning;
    if (mended !== null) take(1, mended);
    else take(1, guess === null ? {} : { senses: [guess.sense], corrected: guess.written });
  }
}
