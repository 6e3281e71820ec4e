/** What two texts have in common line by line, and where they differ. */

export type Line = { readonly kind: 'both' | 'old' | 'new'; readonly text: string };
/** `left`: lines alike that aren't shown. */
export type Shown = Line | { readonly kind: 'left'; readonly count: number };

/** Above this many comparisons what lies between the first and the last difference is shown as changed whole. */
const MOST_CELLS = 1_000_000;

const linesOf = (text: string | null): string[] => {
  if (text === null || text === '') return [];
  return text.replace(/\r?\n$/, '').split(/\r?\n/);
};

function between(old: readonly string[], next: readonly string[]): Line[] {
  const whole = (kind: 'old' | 'new', lines: readonly string[]): Line[] =>
    lines.map((text) => ({ kind, text }));
  if (old.length * next.length > MOST_CELLS) return [...whole('old', old), ...whole('new', next)];
  const best = Array.from({ length: old.length + 1 }, () => new Uint32Array(next.length + 1));
  const cell = (row: number, column: number): number => best[row]?.[column] ?? 0;
  for (let row = old.length - 1; row >= 0; row -= 1) {
    const cells = best[row];
    for (let column = next.length - 1; cells !== undefined && column >= 0; column -= 1) {
      cells[column] =
        old[row] === next[column]
          ? cell(row + 1, column + 1) + 1
          : Math.max(cell(row + 1, column), cell(row, column + 1));
    }
  }
  const lines: Line[] = [];
  let [row, column] = [0, 0];
  while (row < old.length && column < next.length) {
    const [one = '', other = ''] = [old[row], next[column]];
    if (one === other) lines.push({ kind: 'both', text: one });
    else if (cell(row + 1, column) >= cell(row, column + 1)) lines.push({ kind: 'old', text: one });
    else lines.push({ kind: 'new', text: other });
    if (one === other || lines.at(-1)?.kind === 'old') row += 1;
    if (one === other || lines.at(-1)?.kind === 'new') column += 1;
  }
  return [...lines, ...whole('old', old.slice(row)), ...whole('new', next.slice(column))];
}

/** Every line of both, in order; what only one has is marked. Null: there is no file. */
export function lineDifference(before: string | null, after: string | null): Line[] {
  const [old, next] = [linesOf(before), linesOf(after)];
  let start = 0;
  while (start < old.length && start < next.length && old[start] === next[start]) start += 1;
  let end = 0;
  const most = Math.min(old.length, next.length) - start;
  while (end < most && old[old.length - 1 - end] === next[next.length - 1 - end]) end += 1;
  const both = (lines: readonly string[]): Line[] => lines.map((text) => ({ kind: 'both', text }));
  return [
    ...both(old.slice(0, start)),
    ...between(old.slice(start, old.length - end), next.slice(start, next.length - end)),
    ...both(old.slice(old.length - end)),
  ];
}

/** The lines that differ, with `around` lines of what they stand among. */
export function shortened(lines: readonly Line[], around = 2): Shown[] {
  const near = (at: number): boolean =>
    lines.slice(Math.max(0, at - around), at + around + 1).some(({ kind }) => kind !== 'both');
  return lines.reduce<Shown[]>((shown, line, at) => {
    if (near(at)) return [...shown, line];
    const last = shown.at(-1);
    return last?.kind === 'left'
      ? [...shown.slice(0, -1), { kind: 'left', count: last.count + 1 }]
      : [...shown, { kind: 'left', count: 1 }];
  }, []);
}
