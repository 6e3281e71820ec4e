/**
 * The sequence as a maker reads it: section by section, a motif once with how
 * often it repeats, instead of a line a bead. It also keeps the card to one sheet.
 */
import type { Row } from './rows.ts';

export type GroupPart = Pick<Row, 'kind' | 'component' | 'count'>;

export type Group = {
  /** `end`: all that closes one end. */
  readonly kind: 'end' | 'strung' | 'pendant';
  /** Section id; null for what isn't strung. */
  readonly section: string | null;
  readonly side: Row['side'];
  readonly repeats: number;
  /** One repeat, in stringing order. */
  readonly parts: readonly GroupPart[];
  /** Numbers of its first and last component, 1 next to the clasp; null for what isn't strung. */
  readonly numbers: { readonly first: number; readonly last: number } | null;
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

const kindOf = ({ kind }: Row): Group['kind'] => (kind === 'strung' || kind === 'pendant' ? kind : 'end');

/** Rows of one section on one side, all findings of an end, or what hangs. */
function runFrom(rows: readonly Row[], from: number): Row[] {
  const [first] = rows.slice(from, from + 1);
  let end = from;
  while (end < rows.length && first !== undefined && sameRun(first, rows[end])) end += 1;
  return rows.slice(from, end);
}

function sameRun(one: Row, other: Row | undefined): boolean {
  if (other === undefined || kindOf(one) !== kindOf(other) || one.side !== other.side) return false;
  return one.section === other.section;
}

/** The most rows covered by a repeat first; what is left over follows in its own groups. */
function splitRun(run: readonly Row[]): Group[] {
  if (run[0]?.kind !== 'strung') return [groupOf(run, run.length, 1)];
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
    kind: kindOf(first),
    section: first.section,
    side: first.side,
    repeats,
    parts: rows.slice(0, period).map(({ kind, component, count }) => ({ kind, component, count })),
    numbers:
      first.kind === 'strung'
        ? { first: first.runningCount - first.count + 1, last: last.runningCount }
        : null,
    runningCount: last.runningCount,
    toMm: last.toMm,
  };
}

/** One repeat in words: names with their counts, parted by a dot, since names hold commas. */
export function groupText({ parts, repeats }: Group, say: (part: GroupPart) => string): string {
  const text = parts.map((part) => (part.count > 1 ? `${part.count} ${say(part)}` : say(part))).join(' · ');
  return repeats > 1 && parts.length > 1 ? `[ ${text} ]` : text;
}
