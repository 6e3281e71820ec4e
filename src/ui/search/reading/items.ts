/** Takes a query apart into words and amounts, each with what it stands for. */
import { amountAt, type Amount } from './amounts.ts';
import { mistypedName } from './mistypedName.ts';
import { nearest, type Nearest } from './nearest.ts';
import { withFigures } from './numberWords.ts';
import { COMPARING, type Opened, type Role, type Sense } from './open.ts';
import { colourWithin, mendedParts, partsOf } from './parts.ts';
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

const nothing: Omit<Item, 'at' | 'text'> = { senses: [], amount: null, seed: null, corrected: null };

/** The longest name is said in so many words. */
const MOST_NAME = 8;
/** And with a slip in it nobody sees more of one. */
const MOST_MISTYPED = 3;
/** Letters from which the beginning of a word says which is meant. */
const LEAST_BEGUN = 4;
/** Share of a word's letters that who has done writing it wouldn't stop at. */
const LEAST_SHARE = 0.6;
/** A name of several words that is mistyped has so many letters at least. */
const LEAST_LONG_NAME = 8;
/** Beside these a number word is an amount without a unit too. */
const MEASURING: readonly Role[] = ['wrist', 'ankle', 'neck', 'size'];
/** Written out, "in" is nearly always the small word. */
const SMALL_WORD = /\bins?$/i;
const ROUGH: Sense = { as: 'role', role: 'rough' };
/** Signs that compare, before a figure. */
const SIGNS: Readonly<Record<string, Role>> = {
  '<': 'under',
  '≤': 'under',
  '>': 'over',
  '≥': 'over',
  '~': 'about',
};
const SIGN_BEFORE = /([<>≤≥~])=?\s*$/u;
const SEED = /(?<![\p{L}\p{N}])\d{1,2}\/0(?![\p{L}\p{N}])/uy;

/** The word of the texts, or the name, that a word begins. @param share of its letters that must be there */
function begun(key: string, { candidates }: Opened, share = 0): { sense: Sense; written: string } | null {
  if (key.length < LEAST_BEGUN) return null;
  const able = candidates.filter(
    ({ key: other }) => other.startsWith(key) && key.length >= share * other.length,
  );
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
  const items: Item[] = [];
  let next = 0;
  const take = (count: number, more: Partial<Omit<Item, 'at' | 'text'>>): void => {
    const from = tokens[next]?.at[0] ?? 0;
    const to = tokens[next + count - 1]?.at[1] ?? from;
    items.push({ ...nothing, at: [from, to], text: text.slice(from, to), ...more });
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
      const sense = opened.sense(key) ?? (count > 1 ? opened.loose(key) : null);
      if (sense !== null) return { count, senses: [sense] };
    }
    return null;
  }

  /** A name of several words of which some are mistyped: "ankle braclet", "tripple strand". */
  function takeMistyped(least: number): boolean {
    for (let count = Math.min(MOST_MISTYPED, tokens.length - next); count > Math.max(1, least); count -= 1) {
      const run = tokens.slice(next, next + count).map(({ key }) => key);
      const joined = run.join('');
      if (joined.length < LEAST_LONG_NAME || run.slice(least).every((key) => known(key) !== null)) continue;
      const meant = nearest(joined, opened);
      const isName = meant?.sense.as === 'concept' ? meant.written.includes(' ') : meant?.sense.as === 'word';
      if (meant === null || !isName) continue;
      take(count, { senses: [meant.sense], corrected: meant.written });
      return true;
    }
    return false;
  }

  /** Of "forc" the stem is a word's, and it may still be "force" with a letter left out. */
  function isMeant(key: string): boolean {
    if (opened.slip(key) !== null || opened.word(key, true) !== null) return true;
    return known(key) !== null && known(key) !== opened.word(key);
  }

  /** A piece's name that is mistyped: something in it nothing else stands for. */
  function takeMistypedName(least: number): boolean {
    for (let count = Math.min(MOST_NAME, tokens.length - next); count > least; count -= 1) {
      const run = tokens.slice(next, next + count).map(({ key }) => key);
      const isAll = count === tokens.length;
      if (run.every((key, at) => isFigure(next + at) || isMeant(key))) continue;
      const key = run.join('');
      // A short word within others is more likely one of its own.
      if (key.length < LEAST_LONG_NAME && !isAll) continue;
      const name = mistypedName(key, opened.names);
      if (name === null || (live && name.key.startsWith(key))) continue;
      if (count === 1 && (partsOf(key, opened) !== null || nearest(key, opened) !== null)) continue;
      take(count, { senses: name.senses, corrected: name.written });
      return true;
    }
    return false;
  }

  function takeName(): boolean {
    const name = nameAt(next);
    if (takeMistypedName(name?.count ?? 0)) return true;
    if (takeMistyped(name?.count ?? 0)) return true;
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
    items.push({ ...nothing, at, text: text.slice(from, to), ...more });
    next += Math.max(1, count);
  }

  function takeFigure(token: Token): boolean {
    const from = /[£€$]\s?$/u.exec(text.slice(0, token.at[0]))?.index ?? token.at[0];
    SEED.lastIndex = token.at[0];
    const seed = SEED.exec(text)?.[0] ?? null;
    const end = seed === null ? 0 : SEED.lastIndex;
    const amount = seed === null && /^[\d£€$¼½¾]/u.test(text.slice(from)) ? amountAt(text, from) : null;
    const limited = amount?.of === 'number' ? unitBehindLimit(from, amount.end) : null;
    const to = limited?.amount.end ?? amount?.end ?? end;
    if (to === 0) return false;
    const sign = SIGN_BEFORE.exec(text.slice(0, from));
    const role = limited?.role ?? SIGNS[sign?.[1] ?? ''];
    if (role !== undefined) {
      const at = [sign?.index ?? from, from] as const;
      items.push({ ...nothing, at, text: text.slice(...at), senses: [{ as: 'role', role }] });
    }
    takeAmount([from, to], { amount: limited?.amount ?? amount, seed });
    return true;
  }

  /** "100 or more pounds": the figure is read beside its unit, what stands between says how far it reaches. */
  function unitBehindLimit(
    from: number,
    to: number,
  ): { readonly amount: Amount; readonly role: Role } | null {
    const after = tokens.findIndex(({ at }) => at[0] >= to);
    const name = after < 0 ? null : nameAt(after);
    const said = roleOf(name);
    const role = said === 'more' ? 'over' : said === 'less' ? 'under' : null;
    const unit = tokens[after + (name?.count ?? 0)]?.at[0];
    if (role === null || unit === undefined) return null;
    const figure = text.slice(from, to).trim();
    const amount = amountAt(`${text.slice(0, to)}${figure} ${text.slice(unit)}`, to);
    if (amount === null || amount.of === 'number') return null;
    return { amount: { ...amount, end: amount.end - to - figure.length - 1 + unit }, role };
  }

  /** A word of the texts that was written in two. */
  function takeParted({ key }: Token): boolean {
    const after = tokens[next + 1];
    const joined = after === undefined ? null : opened.word(key + after.key, true);
    if (joined === null) return false;
    take(2, { senses: [joined] });
    return true;
  }

  function isFigure(at: number): boolean {
    const token = tokens[at];
    return token !== undefined && (/^\d/.test(token.key) || opened.figureOf(token.key) !== null);
  }

  function farOff(key: string): Pick<Nearest, 'sense' | 'written' | 'far'> | null {
    const written = opened.slip(key);
    const sense = written === null ? null : opened.sense(opened.keyOf(written));
    return written === null || sense === null ? null : { sense, written, far: 0 };
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
    const beginning = begun(key, opened, writing ? 0 : LEAST_SHARE);
    if (beginning !== null && writing) {
      take(1, { senses: [beginning.sense] });
      return;
    }
    const meant = farOff(key) ?? nearest(key, opened, isFigure(next + 1));
    const parts = partsOf(key, opened);
    // Of "Haltskette" a word of the texts would be left, but it was meant to be "Halskette".
    const isNear = meant?.sense.as === 'concept' && meant.far <= 1;
    if (parts !== null && !(isNear && parts.some(({ as }) => as === 'word'))) {
      take(1, { senses: parts });
      return;
    }
    const mended = meant === null ? mendedParts(key, opened) : null;
    const guess = meant ?? beginning;
    const colour = guess === null && mended === null ? colourWithin(key, opened) : null;
    if (mended !== null) take(1, mended);
    else if (colour !== null) take(1, { senses: [colour] });
    else take(1, guess === null ? {} : { senses: [guess.sense], corrected: guess.written });
  }
}
