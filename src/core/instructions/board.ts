/** Marks on the bead board: zero at the middle of the beads, measured both ways. */
import type { Row } from './rows.ts';

export type BoardMark = {
  /** Side of the board as it lies, for this hand. */
  readonly side: 'left' | 'right';
  /** Distance from zero, 0 or more. */
  readonly fromZeroMm: number;
  /** What ends there, counted from the middle outwards. */
  readonly ends: 'section' | 'crimp' | 'loop' | 'clasp' | 'ring';
  /** Section id where a section ends there. */
  readonly section: string | null;
};

export type Board = {
  /** Side where the clasp lies; left where either will do. */
  readonly claspSide: 'left' | 'right';
  /** From the clasp's bearing point to zero. */
  readonly zeroMm: number;
  readonly marks: readonly BoardMark[];
};

/** What hangs, and a clasp's other half, take no room of their own. */
const MARK_OF: Readonly<Record<Row['kind'], BoardMark['ends'] | null>> = {
  pendant: null,
  'other-half': null,
  strung: 'section',
  end: 'crimp',
  loop: 'loop',
  clasp: 'clasp',
  ring: 'ring',
};

/** Rows of one side from the middle outwards, each with its outer edge as distance from zero. */
function outwards(rows: readonly Row[], zeroMm: number, end: 'clasp' | 'ring') {
  const edges = rows.map((row) => ({
    row,
    outerMm: end === 'clasp' ? zeroMm - row.fromMm : row.toMm - zeroMm,
  }));
  const beyond = edges.filter((edge) => edge.outerMm > 0);
  return end === 'clasp' ? beyond.toReversed() : beyond;
}

/** The outermost edge of every section and finding on one side. */
function marksOf(
  rows: readonly Row[],
  zeroMm: number,
  end: 'clasp' | 'ring',
  side: 'left' | 'right',
): BoardMark[] {
  const marks: BoardMark[] = [];
  for (const { row, outerMm } of outwards(rows, zeroMm, end)) {
    const ends = MARK_OF[row.kind];
    if (ends === null) continue;
    const mark: BoardMark = { side, fromZeroMm: outerMm, ends, section: row.section };
    const last = marks.at(-1);
    if (last !== undefined && last.ends === ends && last.section === row.section)
      marks[marks.length - 1] = mark;
    else marks.push(mark);
  }
  return marks;
}

/**
 * The board of one strand. Zero is the middle of what is strung, where a centre
 * bead lies (common practice, no source); clasp and ring lie inside the marks.
 */
export function boardOf(rows: readonly Row[], claspSide: 'left' | 'right'): Board {
  const strung = rows.filter((row) => row.kind === 'strung');
  const zeroMm = ((strung[0]?.fromMm ?? 0) + (strung.at(-1)?.toMm ?? 0)) / 2;
  const ringSide = claspSide === 'left' ? 'right' : 'left';
  return {
    claspSide,
    zeroMm,
    marks: [...marksOf(rows, zeroMm, 'clasp', claspSide), ...marksOf(rows, zeroMm, 'ring', ringSide)],
  };
}
