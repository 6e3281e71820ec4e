/** Takes a query apart into words and amounts, each with what it stands for. */
import { amountAt, type Amount } from './amounts.ts';
import { nearest } from './nearest.ts';
import { withFigures } from './numberWords.ts';
import type { Candidate, Opened, Role, Sense } from './open.ts';
import { mendedParts, partsOf } from './parts.ts';
import type { Place } from './reading.ts';
import { tokensOf, type Token } from './tokens.ts';

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

/** The longest name is said in so many words. */
const MOST_NAME = 8;
/** Letters from which the beginning of a word says which is meant. */
const LEAST_BEGUN = 4;
/** Beside these a number word is an amount without a unit too. */
const MEASURING: readonly Role[] = ['wrist', 'ankle', 'neck', 'size'];
const COMPARING: readonly Role[] = ['under', 'over', 'between', 'about'];
/** Written out, "in" is nearly always the small word. */
const SMALL_WORD = /\bins?$/i;
const ROUGH: Sense = { as: 'role', role: 'rough' };
const SEED = /(?<![\p{L}\p{N}])\d{1,2}\/0(?![\p{L}\p{N}])/uy;

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

  const worded = withFigures(
    text,
    tokens,
    opened.figureOf,
    (from, count) => (nameAt(from)?.count ?? 0) > count,
  );

  while (next < tokens.length) {
    const token = tokens[next];
    if (token === undefined) break;
    if (takeParted(token) || takeRough(token) || takeWorded(token) || takeName() || takeFigure(token))
      continue;
    takeWord(token);
  }
  return items;

  /** Names of pieces, of what can be asked for and of roles, the longest first. */
  function nameAt(from: number): { readonly count: number; readonly senses: readonly Sense[] } | null {
    for (let count = Math.min(MOST_NAME, tokens.length - from); count >= 1; count -= 1) {
      const key = tokens
        .slice(from, from + count)
        .map((one) => one.key)
        .join('');
      const name = opened.name(key);
      if (name !== null) return { count, senses: name };
      if (count === 1 && /^\d+$/.test(key) && amountAt(text, tokens[from]?.at[0] ?? 0)?.of !== 'number')
        return null;
      // "Size S" isn't "sizes".
      if (count > 1 && /^[a-z]$/.test(tokens[from + count - 1]?.key ?? '')) continue;
      const sense = opened.sense(key);
      if (sense !== null) return { count, senses: [sense] };
    }
    return null;
  }

  function takeName(): boolean {
    const name = nameAt(next);
    if (name === null) return false;
    take(name.count, { senses: name.senses });
    return true;
  }

  function roleOf(item: { readonly senses: readonly Sense[] } | null | undefined): Role | null {
    const sense = item?.senses[0];
    return sense?.as === 'role' ? sense.role : null;
  }

  /** What was said last, small words left out. */
  function roleBefore(): Role | null {
    return roleOf(items.findLast((item) => roleOf(item) !== 'stop'));
  }

  /** "Small wrist", "size M". */
  function takeRough({ key }: Token): boolean {
    const isLetter = /^[sml]$/.test(key) && roleBefore() === 'size';
    const beside = [roleBefore(), roleOf(nameAt(next + 1))];
    const isWord = opened.isRough(key) && beside.some((role) => role !== null && MEASURING.includes(role));
    if (!isLetter && !isWord) return false;
    take(1, { senses: [ROUGH] });
    return true;
  }

  /** An amount that begins with a number word. */
  function takeWorded({ at: [from] }: Token): boolean {
    if (text[from] === worded[from] || (nameAt(next)?.count ?? 0) > 1) return false;
    const amount = amountAt(worded, from + worded.slice(from).search(/\S/));
    if (amount === null) return false;
    const written = text.slice(from, amount.end);
    const before = roleBefore();
    const isBare = amount.of === 'number' || SMALL_WORD.test(written);
    if (isBare && (before === null || ![...MEASURING, ...COMPARING].includes(before))) return false;
    takeAmount([from, amount.end], { amount });
    return true;
  }

  function takeAmount(at: Place, more: Partial<Pick<Item, 'amount' | 'seed'>>): void {
    const [from, to] = at;
    const count = tokens.slice(next).filter(({ at }) => at[0] < to).length;
    items.push({
      at,
      text: text.slice(from, to),
      senses: [],
      amount: null,
      seed: null,
      corrected: null,
      ...more,
    });
    next += Math.max(1, count);
  }

  function takeFigure(token: Token): boolean {
    const from = /[£€$]\s?$/u.exec(text.slice(0, token.at[0]))?.index ?? token.at[0];
    SEED.lastIndex = token.at[0];
    const seed = SEED.exec(text)?.[0] ?? null;
    const end = seed === null ? 0 : SEED.lastIndex;
    const amount = seed === null && /^[\d£€$¼½¾]/u.test(text.slice(from)) ? amountAt(text, from) : null;
    const to = amount?.end ?? end;
    if (to === 0) return false;
    takeAmount([from, to], { amount, seed });
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
