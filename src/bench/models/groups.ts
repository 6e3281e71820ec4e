/**
 * The sequence as a maker reads it: section by section, a motif once with how
 * often it repeats, instead of a line a bead. It also keeps the card to one sheet.
 */
import type { Row } from '#core/instructions/rows.ts';

export type GroupPart = { readonly component: string | null; readonly count: number };

export type Group = {
  readonly kind: Row['kind'];
  /** Section id; null at the ends. */
  readonly section: string | null;
  readonly side: Row['side'];
  readonly repeats: number;
  /** One repeat, in stringing order. */
  readonly parts: readonly GroupPart[];
  /** Components strung when the group is done. */
  readonly runningCount: number;
  /** From the clasp's bearing point, straight. */
  readonly toMm: number;
};

/** Groups the rows of one strand, clasp to ring. Nothing is left out: the counts of all groups add up to the rows'. */
export function groupsOf(rows: readonly Row[]): Group[] {
  const groups: Group[] = [];
  let at = 0;
  while (at < rows.length) {
    const run = runFrom(rows, at);
    groups.push(...splitRun(run));
    at += run.length;
  }
  return groups;
}

/** Rows of one section on one side, or a single finding. */
function runFrom(rows: readonly Row[], from: number): Row[] {
  const [first] = rows.slice(from, from + 1);
  if (first === undefined || first.kind !== 'strung') return rows.slice(from, from + 1);
  let end = from;
  while (end < rows.length && sameRun(first, rows[end])) end += 1;
  return rows.slice(from, end);
}

function sameRun(one: Row, other: Row | undefined): boolean {
  return other?.kind === 'strung' && other.section === one.section && other.side === one.side;
}

/** The most rows covered by a repeat first; what is left over follows in its own groups. */
function splitRun(run: readonly Row[]): Group[] {
  const groups: Group[] = [];
  let at = 0;
  while (at < run.length) {
    const { period, repeats } = bestRepeat(run, at);
    groups.push(groupOf(run.slice(at, at + period * repeats), period, repeats));
    at += period * repeats;
  }
  return groups;
}

/** Longest motif looked for, in rows. */
const MOST_PERIOD = 12;

function bestRepeat(run: readonly Row[], at: number): { period: number; repeats: number } {
  let best = { period: 1, repeats: 1 };
  const most = Math.min(MOST_PERIOD, Math.floor((run.length - at) / 2));
  for (let period = 1; period <= most; period += 1) {
    const repeats = repeatsOf(run, at, period);
    if (repeats > 1 && period * repeats > best.period * best.repeats) best = { period, repeats };
  }
  return best.repeats > 1 ? best : { period: plainRows(run, at), repeats: 1 };
}

/** Rows up to where a repeat begins. */
function plainRows(run: readonly Row[], at: number): number {
  for (let next = at + 1; next < run.length; next += 1) {
    const most = Math.min(MOST_PERIOD, Math.floor((run.length - next) / 2));
    for (let period = 1; period <= most; period += 1) {
      if (repeatsOf(run, next, period) > 1) return next - at;
    }
  }
  return run.length - at;
}

function repeatsOf(run: readonly Row[], at: number, period: number): number {
  let repeats = 1;
  while (alike(run, at, at + repeats * period, period)) repeats += 1;
  return repeats;
}

function alike(run: readonly Row[], one: number, other: number, length: number): boolean {
  for (let step = 0; step < length; step += 1) {
    const a = run[one + step];
    const b = run[other + step];
    if (a === undefined || b === undefined || a.component !== b.component || a.count !== b.count)
      return false;
  }
  return true;
}

function groupOf(rows: readonly Row[], period: number, repeats: number): Group {
  const [first] = rows;
  const last = rows.at(-1);
  if (first === undefined || last === undefined) throw new RangeError('a group holds a row');
  return {
    kind: first.kind,
    section: first.section,
    side: first.side,
    repeats,
    parts: rows.slice(0, period).map(({ component, count }) => ({ component, count })),
    runningCount: last.runningCount,
    toMm: last.toMm,
  };
}

/** One repeat in words: names with their counts, parted by a dot, since names hold commas. */
export function groupText(
  { parts, repeats }: Group,
  nameOf: (id: string) => string,
  bareLoop: string,
): string {
  const text = parts
    .map(({ component, count }) => {
      const name = component === null ? bareLoop : nameOf(component);
      return count > 1 ? `${count} ${name}` : name;
    })
    .join(' · ');
  return repeats > 1 && parts.length > 1 ? `[ ${text} ]` : text;
}
