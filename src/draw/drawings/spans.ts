/** Brackets over runs of a strand, with the numbers that its list gives them: 1 is the bead next to the clasp. */
import type { Part, Spot } from '../layout/spot.ts';
import { element, num, pair } from '../svg/text.ts';

/** Beads from one number to another, both among them. */
export type Span = { readonly first: number; readonly last: number };

/** The number of each bead by its place in the strand; crimps and covers have none. */
export function numbersOf(parts: readonly Part[]): ReadonlyMap<number, number> {
  const strung = parts
    .filter(({ section }) => section !== 'end')
    .toSorted((one, other) => one.index - other.index);
  return new Map(strung.map(({ index }, at) => [index, at + 1]));
}

/** Lines that numbers may take, one over the other, so that none runs into its neighbour; more would hide what they count. */
const MOST_LINES = 3;

/** Width of a digit, height of a bracket and of what stands between it and the numbers, as shares of the letters' height. */
const DIGIT = 0.56;
const BRACKET = 0.25;
const CLEAR = 0.5;

export type LaidSpans = {
  readonly brackets: readonly Bracket[];
  readonly textMm: number;
  /** From the brackets' feet up to the top of the highest number. */
  readonly heightMm: number;
};

/** Lays brackets over beads that lie straight, wherever above them they will be. A span that isn't all here is bracketed as far as it is. */
export function laySpans(
  spans: readonly Span[],
  numbers: ReadonlyMap<number, number>,
  spots: readonly Spot[],
  textMm: number,
): LaidSpans {
  const freeFromMm: number[] = [];
  const brackets = runsOf(spans, numbers, spots).map((run): Bracket => {
    const halfMm = (run.label.length * textMm * DIGIT) / 2 + textMm * 0.15;
    const middleMm = (run.fromMm + run.toMm) / 2;
    const free = freeFromMm.findIndex((freeMm) => middleMm - halfMm >= freeMm);
    const line = free === -1 ? freeFromMm.length : free;
    if (line === MOST_LINES) return { ...run, line: null };
    freeFromMm[line] = middleMm + halfMm;
    return { ...run, line };
  });
  const lines = freeFromMm.length;
  return { brackets, textMm, heightMm: lines === 0 ? 0 : textMm * (CLEAR + lines) };
}

/** @param yMm where the brackets' feet stand */
export function paintSpans({ brackets, textMm }: LaidSpans, yMm: number): string {
  let d = '';
  let labels = '';
  for (const { fromMm, toMm, label, line } of brackets) {
    const inset = Math.min(0.4, (toMm - fromMm) * 0.15);
    d += `M${pair(fromMm + inset, yMm)}v${num(-textMm * BRACKET)}H${num(toMm - inset)}v${num(textMm * BRACKET)}`;
    if (line === null) continue;
    labels += element('text', { x: (fromMm + toMm) / 2, y: yMm - textMm * (CLEAR + line) }, label);
  }
  return (
    element('path', { d, fill: 'none', stroke: 'currentColor', 'stroke-width': textMm * 0.07 }) +
    element(
      'g',
      { fill: 'currentColor', 'font-size': textMm, 'text-anchor': 'middle', 'font-family': 'inherit' },
      labels,
    )
  );
}

type Run = { readonly fromMm: number; readonly toMm: number; readonly label: string };
/** `line`: which of the lines its number stands on; null where there is no room for it. */
type Bracket = Run & { readonly line: number | null };

/** Left to right. */
function runsOf(spans: readonly Span[], numbers: ReadonlyMap<number, number>, spots: readonly Spot[]): Run[] {
  const runs = spans.flatMap(({ first, last }): Run[] => {
    const within = spots.filter(({ index }) => {
      const number = numbers.get(index);
      return number !== undefined && number >= first && number <= last;
    });
    if (within.length === 0) return [];
    const fromMm = Math.min(...within.map(({ xMm, component }) => xMm - component.alongMm / 2));
    const toMm = Math.max(...within.map(({ xMm, component }) => xMm + component.alongMm / 2));
    return [{ fromMm, toMm, label: first === last ? String(first) : `${first}–${last}` }];
  });
  return runs.sort((one, other) => one.fromMm - other.fromMm);
}
