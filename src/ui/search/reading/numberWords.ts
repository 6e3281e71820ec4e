/** Numbers that are written as words: "thirty-five", "fünfundvierzig", "six and a half", "6 and a half". */
import { keyOf } from './keyOf.ts';
import type { Token } from './tokens.ts';
import type { NumberWords } from './vocabulary.ts';

/** Figures of a number by its words, folded and joined; null for what is no number. */
export type FigureOf = (key: string) => string | null;

/** "Two hundred and thirty-five" has so many. */
const MOST_WORDS = 5;

const termsIn = (list: string): string[] => list.split(',').map(keyOf);

export function figuresIn(words: NumberWords): FigureOf {
  const [small, tens] = [termsIn(words.small), termsIn(words.tens)];
  const [hundred, and] = [words.hundred, words.and].map(keyOf) as [string, string];
  const fractions = words.fractions.split(',').map((one) => {
    const [name = '', figures = ''] = one.split(':');
    return [keyOf(name), figures.trim()] as const;
  });
  const known = new Map(small.map((key, index) => [key, index + 1]));
  for (const [index, ten] of tens.entries()) {
    known.set(ten, (index + 2) * 10);
    for (const [before, one] of small.slice(0, 9).entries())
      known.set(words.onesFirst ? one + and + ten : ten + one, (index + 2) * 10 + before + 1);
  }
  const whole = (key: string): number | null => {
    const [before = '', after, ...more] = key.split(hundred);
    if (after === undefined) return known.get(before) ?? null;
    if (more.length > 0) return null;
    const hundreds = before === '' ? 1 : (known.get(before) ?? 0);
    const rest = after === '' ? 0 : (known.get(after) ?? known.get(after.replace(and, '')) ?? null);
    return rest === null || hundreds < 1 || hundreds > 9 ? null : hundreds * 100 + rest;
  };
  return (key) => {
    for (const [name, figures] of fractions) {
      const before = key.endsWith(name) ? key.slice(0, -name.length) : '';
      const number = /^\d{1,3}$/.test(before) ? Number(before) : whole(before);
      if (number !== null) return `${number} ${figures}`;
    }
    return whole(key)?.toString() ?? null;
  };
}

/**
 * The text with figures in the place of number words, which end where the words end; all else stays in its place.
 * @param isName true where the words from that one on are a name: "two strands" are no amount
 */
export function withFigures(
  text: string,
  tokens: readonly Token[],
  figureOf: FigureOf,
  isName: (from: number, count: number) => boolean,
): string {
  let worded = text;
  for (let at = 0; at < tokens.length; at += 1) {
    for (let count = Math.min(MOST_WORDS, tokens.length - at); count >= 1; count -= 1) {
      const run = tokens.slice(at, at + count);
      const figure = figureOf(run.map(({ key }) => key).join(''));
      const [from, to] = [run[0]?.at[0] ?? 0, run.at(-1)?.at[1] ?? 0];
      if (figure === null || figure.length > to - from || isName(at, count)) continue;
      worded = worded.slice(0, from) + figure.padStart(to - from) + worded.slice(to);
      at += count - 1;
      break;
    }
  }
  return worded;
}
