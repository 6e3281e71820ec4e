/** Which item of an old list each item of the new one was, so that its text and its remarks stay with it. */
import { isFields, isScalarValue, samePlain, type Plain } from './plain.ts';

export type Aligned = {
  /** Place of the old item; null for one that is new. */
  readonly from: number | null;
  /** True where it has left its place among those that stay. */
  readonly moved: boolean;
};

/** Above this many comparisons only what both ends share is matched first; the rest is matched one by one. */
const MOST_CELLS = 250_000;

/** Pairs of places, increasing in both, of a longest common part. */
function commonPart(old: readonly Plain[], next: readonly Plain[]): [number, number][] {
  let start = 0;
  while (start < old.length && start < next.length && samePlain(old[start], next[start])) start += 1;
  let end = 0;
  const most = Math.min(old.length, next.length) - start;
  while (end < most && samePlain(old[old.length - 1 - end], next[next.length - 1 - end])) end += 1;
  const head = Array.from({ length: start }, (_, at): [number, number] => [at, at]);
  const tail = Array.from({ length: end }, (_, at): [number, number] => [
    old.length - end + at,
    next.length - end + at,
  ]);
  const rows = old.length - end - start;
  const columns = next.length - end - start;
  return [...head, ...(rows * columns > MOST_CELLS ? [] : middle(old, next, start, rows, columns)), ...tail];
}

function middle(
  old: readonly Plain[],
  next: readonly Plain[],
  start: number,
  rows: number,
  columns: number,
): [number, number][] {
  const best = Array.from({ length: rows + 1 }, () => new Int32Array(columns + 1));
  const cell = (row: number, column: number): number => best[row]?.[column] ?? 0;
  const same = (row: number, column: number): boolean => samePlain(old[start + row], next[start + column]);
  for (let row = rows - 1; row >= 0; row -= 1) {
    for (let column = columns - 1; column >= 0; column -= 1) {
      const value = same(row, column)
        ? cell(row + 1, column + 1) + 1
        : Math.max(cell(row + 1, column), cell(row, column + 1));
      best[row]?.fill(value, column, column + 1);
    }
  }
  const pairs: [number, number][] = [];
  for (let row = 0, column = 0; row < rows && column < columns;) {
    if (same(row, column)) pairs.push([start + row++, start + column++]);
    else if (cell(row + 1, column) >= cell(row, column + 1)) row += 1;
    else column += 1;
  }
  return pairs;
}

/** How much two items have in common: fields that say the same. */
function likeness(one: Plain | undefined, other: Plain | undefined): number {
  if (!isFields(one) || !isFields(other)) return 0;
  return Object.keys(one).filter((name) => samePlain(one[name], other[name])).length;
}

/** Places that are free on both sides between two pairs that stay. */
type Gap = { readonly old: readonly number[]; readonly next: readonly number[] };

function gapsBetween(pairs: readonly (readonly [number, number])[], sizes: [number, number]): Gap[] {
  const range = (from: number, to: number): number[] =>
    Array.from({ length: Math.max(0, to - from) }, (_, at) => from + at);
  const ends = [...pairs, sizes];
  return ends.map(([old, next], at) => {
    const [lastOld, lastNext] = pairs[at - 1] ?? [-1, -1];
    return { old: range(lastOld + 1, old), next: range(lastNext + 1, next) };
  });
}

/** For each item of `next`, where it was in `old`. No old item is used twice. */
export function align(old: readonly Plain[], next: readonly Plain[]): Aligned[] {
  const stay = commonPart(old, next);
  const aligned: (Aligned | null)[] = next.map(() => null);
  const free = new Set(old.keys());
  const use = (from: number, to: number, moved: boolean): void => {
    aligned[to] = { from, moved };
    free.delete(from);
  };
  for (const [from, to] of stay) use(from, to, false);
  const gaps = gapsBetween(stay, [old.length, next.length]);
  // Changed in its place: as many gone as come, each of the same kind.
  for (const gap of gaps) {
    if (gap.old.length !== gap.next.length) continue;
    gap.next.forEach((to, at) => {
      const from = gap.old[at] ?? -1;
      const alike = isScalarValue(old[from]) === isScalarValue(next[to]);
      const elsewhere = next.some((item, other) => other !== to && samePlain(item, old[from]));
      const cameFrom = old.some((item, other) => other !== from && samePlain(item, next[to]));
      if (alike && !elsewhere && !cameFrom) use(from, to, false);
    });
  }
  const claim = (score: (from: number, to: number) => number): void => {
    next.forEach((_, to) => {
      if (aligned[to] !== null) return;
      const ranked = [...free].map((from) => ({ from, score: score(from, to) }));
      const best = ranked.reduce<{ from: number; score: number } | null>(
        (top, one) => (one.score > (top?.score ?? 0) ? one : top),
        null,
      );
      if (best !== null) use(best.from, to, true);
    });
  };
  claim((from, to) => (samePlain(old[from], next[to]) ? 1 : 0));
  claim((from, to) => likeness(old[from], next[to]));
  return settled(aligned);
}

/** What was claimed and still lies between its neighbours that stay has not moved. */
function settled(aligned: readonly (Aligned | null)[]): Aligned[] {
  let last = -1;
  return aligned.map((one, at) => {
    if (one === null || one.from === null) return { from: null, moved: false };
    const { from, moved } = one;
    const next = aligned.slice(at + 1).find((other) => other?.moved === false)?.from ?? Infinity;
    const stays = !moved || (from > last && from < next);
    if (stays) last = from;
    return { from, moved: !stays };
  });
}
