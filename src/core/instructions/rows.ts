/** The strand as a list to string from: clasp to ring, like components in a row taken together. */
import type { Design } from '../design/design.ts';
import type { Placed } from '../design/expand.ts';
import { heldAt } from './held.ts';
import type { End } from './held.ts';
import type { HungPendant } from './hungPendant.ts';

/** What one entry of the list is: a finding at an end, the wire loop, a row of strung components, what hangs between two of them. */
export type RowKind = 'clasp' | 'loop' | 'end' | 'strung' | 'pendant' | 'ring' | 'other-half';

export type Row = {
  readonly kind: RowKind;
  /** Section id of a strung row; null at the ends. */
  readonly section: string | null;
  /** Side of the board with the clasp on the left; the drawing mirrors it for the other hand. */
  readonly side: Placed['side'];
  /** Component id; null for the bare wire loop. */
  readonly component: string | null;
  readonly count: number;
  /** Components strung so far, this row's among them; findings, crimps, covers and what hangs aren't counted. */
  readonly runningCount: number;
  /** Length of one; 0 for a crimp inside its cover, for what hangs, and for a clasp's other half, since its first counts for both. */
  readonly eachMm: number;
  /** Running length from the clasp's bearing point, straight. */
  readonly fromMm: number;
  readonly toMm: number;
};

type Entry = Omit<Row, 'runningCount' | 'fromMm' | 'toMm'>;

function findingAt(design: Design, end: End): Entry[] {
  const { what, component: id } = heldAt(design, end);
  const component = id === null ? undefined : design.components[id];
  if (component === undefined) return [];
  const kind = what === 'other-half' ? what : end;
  const eachMm = what === 'other-half' ? 0 : component.alongMm;
  return [
    {
      kind,
      section: null,
      side: end === 'clasp' ? 'left' : 'right',
      component: component.id,
      count: 1,
      eachMm,
    },
  ];
}

function wireLoop(design: Design, side: Placed['side']): Entry {
  const { guard, loopMm } = design.ends;
  return { kind: 'loop', section: null, side, component: guard, count: 1, eachMm: loopMm };
}

function entry({ component, section, side, covered }: Placed): Entry {
  const atEnd = section === 'end';
  return {
    kind: atEnd ? 'end' : 'strung',
    section: atEnd ? null : section,
    side,
    component: component.id,
    count: 1,
    eachMm: covered === true ? 0 : component.alongMm,
  };
}

const alike = (one: Entry, other: Entry): boolean =>
  one.kind === 'strung' &&
  other.kind === 'strung' &&
  one.section === other.section &&
  one.side === other.side &&
  one.component === other.component;

/** What is strung with what hangs at its place in it. */
function between(sequence: readonly Placed[], pendant: HungPendant | null): Entry[] {
  const entries = sequence.map(entry);
  if (pendant === null) return entries;
  const crimped = sequence.filter(({ section, side }) => section === 'end' && side === 'left').length;
  const before = crimped + pendant.after;
  const hung: Entry = {
    kind: 'pendant',
    section: null,
    side: 'centre',
    component: pendant.pendant,
    count: 1,
    eachMm: 0,
  };
  return entries.toSpliced(before, 0, hung);
}

/**
 * Rows of one strand from clasp to ring. The last `toMm` is the finished length.
 * @param sequence the strand as `expand` gives it, crimps and covers included.
 * @param pendant what hangs on this strand; null for nothing.
 */
export function rowsOf(design: Design, sequence: readonly Placed[], pendant: HungPendant | null): Row[] {
  const entries = [
    ...findingAt(design, 'clasp'),
    wireLoop(design, 'left'),
    ...between(sequence, pendant),
    wireLoop(design, 'right'),
    ...findingAt(design, 'ring'),
  ];
  const rows: Row[] = [];
  for (const next of entries) {
    const last = rows.at(-1);
    const strung = next.kind === 'strung' ? 1 : 0;
    if (last !== undefined && alike(last, next)) {
      rows[rows.length - 1] = {
        ...last,
        count: last.count + 1,
        runningCount: last.runningCount + strung,
        toMm: last.toMm + next.eachMm,
      };
    } else {
      const fromMm = last?.toMm ?? 0;
      const runningCount = (last?.runningCount ?? 0) + strung;
      rows.push({ ...next, runningCount, fromMm, toMm: fromMm + next.eachMm });
    }
  }
  return rows;
}
