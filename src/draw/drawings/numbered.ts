/** The bench card's picture: every component in stringing order, numbered, in rows that fit the paper. */
import type { Design } from '#core/design/design.ts';
import type { Placed } from '#core/design/expand.ts';
import { paintClosing } from '../paint/finding/all.ts';
import { mixInk } from '../paint/ink/ink.ts';
import { paintSpots } from '../paint/bead/strand.ts';
import { claspEnd, placeEnd, ringEnd, lengthOfEnd, type Piece } from '../layout/closing.ts';
import { toParts, type Part } from '../layout/spot.ts';
import { lengthOf, placeStraight } from '../layout/straight.ts';
import { svgDocument, type Caption } from '../svg/document.ts';
import { element, escapeXml, num, pair } from '../svg/text.ts';

export type NumberedOptions = Caption & {
  /** Width of a row on paper; A4 and US Letter both hold the usual one with a margin. */
  readonly rowMm?: number;
  /** What to write where a section begins, by section id. */
  readonly sectionNames?: Readonly<Record<string, string>>;
};

const ROW_MM = 180;

/** Small print that is still easily read at arm's length. */
const TEXT_MM = 2.6;

type NumberedRow = {
  readonly parts: readonly Part[];
  readonly left: readonly Piece[];
  readonly right: readonly Piece[];
};

/**
 * One strand, clasp first, life size. Under each run of like components stand the places it takes in the
 * strand, counted from 1 at the clasp; what its cover hides isn't counted.
 */
export function drawNumbered(design: Design, sequence: readonly Placed[], options: NumberedOptions): string {
  const ink = mixInk(options.idPrefix);
  const rowMm = options.rowMm ?? ROW_MM;
  const rows = cutRows(toParts(sequence), claspEnd(design), ringEnd(design), rowMm);
  let painted = '';
  let yMm = 0;
  for (const [at, row] of rows.entries()) {
    const closers = [...row.left, ...row.right].map((piece) => piece.component?.acrossMm ?? 0);
    const halfMm = Math.max(2, ...row.parts.map((part) => part.component.acrossMm), ...closers) / 2;
    yMm += halfMm + TEXT_MM * 2;
    const startMm = lengthOfEnd(row.left);
    const spots = placeStraight(row.parts, startMm, yMm);
    const endMm = startMm + lengthOf(row.parts) + lengthOfEnd(row.right);
    const closing = [...placeEnd(row.left, 0, yMm, 1), ...placeEnd(row.right, endMm, yMm, -1)];
    painted += closing.map((spot) => paintClosing(ink, design, spot)).join('') + paintSpots(ink, spots);
    painted += paintRuns(row.parts, startMm, yMm + halfMm + TEXT_MM * 0.5);
    const before = at === 0 ? undefined : rows[at - 1]?.parts.at(-1)?.section;
    painted += paintSections(
      row.parts,
      before,
      options.sectionNames ?? {},
      startMm,
      yMm - halfMm - TEXT_MM * 0.6,
    );
    yMm += halfMm + TEXT_MM * 3;
  }
  const box = { x: -3, y: 0, width: rowMm + 6, height: yMm };
  return svgDocument(options, box, ink.definitions(), painted, true);
}

/** As many components a row as fit; the clasp's end goes with the first, the ring's with the last. */
function cutRows(
  parts: readonly Part[],
  left: readonly Piece[],
  right: readonly Piece[],
  rowMm: number,
): NumberedRow[] {
  const rows: Part[][] = [[]];
  let usedMm = lengthOfEnd(left);
  for (const [at, part] of parts.entries()) {
    const endMm = at === parts.length - 1 ? lengthOfEnd(right) : 0;
    const row = rows.at(-1);
    if (row !== undefined && (usedMm + part.component.alongMm + endMm <= rowMm || row.length === 0)) {
      row.push(part);
      usedMm += part.component.alongMm;
    } else {
      rows.push([part]);
      usedMm = part.component.alongMm;
    }
  }
  return rows.map((row, at) => ({
    parts: row,
    left: at === 0 ? left : [],
    right: at === rows.length - 1 ? right : [],
  }));
}

type Run = { readonly first: Part; readonly count: number; readonly fromMm: number; readonly toMm: number };

/** Like neighbours taken together. */
function runsOf(parts: readonly Part[], startMm: number): Run[] {
  const runs: Run[] = [];
  let edgeMm = startMm;
  for (const part of parts) {
    const last = runs.at(-1);
    const toMm = edgeMm + part.component.alongMm;
    if (
      last !== undefined &&
      last.first.component.id === part.component.id &&
      last.first.section === part.section
    ) {
      runs[runs.length - 1] = { ...last, count: last.count + 1, toMm };
    } else {
      runs.push({ first: part, count: 1, fromMm: edgeMm, toMm });
    }
    edgeMm = toMm;
  }
  return runs;
}

/** A bracket under each run and the places it takes; a number that would run into the last steps down a line. */
function paintRuns(parts: readonly Part[], startMm: number, yMm: number): string {
  let d = '';
  let labels = '';
  const freeFromMm = [-Infinity, -Infinity];
  for (const { first, count, fromMm, toMm } of runsOf(parts, startMm)) {
    const inset = Math.min(0.4, (toMm - fromMm) * 0.15);
    d += `M${pair(fromMm + inset, yMm)}v.6H${num(toMm - inset)}v-.6`;
    const number = first.index + 1;
    const label = count === 1 ? String(number) : `${number}–${number + count - 1}`;
    const halfMm = label.length * TEXT_MM * 0.3 + 0.3;
    const middle = (fromMm + toMm) / 2;
    const line = freeFromMm.findIndex((freeMm) => middle - halfMm >= freeMm);
    if (line === -1) continue;
    freeFromMm[line] = middle + halfMm;
    labels += element('text', { x: middle, y: yMm + TEXT_MM * (1.2 + line) }, label);
  }
  return (
    element('path', { d, fill: 'none', stroke: 'currentColor', 'stroke-width': 0.18 }) +
    element('g', textLook('middle'), labels)
  );
}

function paintSections(
  parts: readonly Part[],
  before: string | undefined,
  names: Readonly<Record<string, string>>,
  startMm: number,
  yMm: number,
): string {
  let labels = '';
  let edgeMm = startMm;
  let last = before;
  let freeFromMm = -Infinity;
  for (const part of parts) {
    const name = names[part.section];
    if (part.section !== last && name !== undefined && edgeMm >= freeFromMm) {
      labels += element('text', { x: edgeMm, y: yMm }, escapeXml(name));
      freeFromMm = edgeMm + (name.length + 1) * TEXT_MM * 0.55;
    }
    last = part.section;
    edgeMm += part.component.alongMm;
  }
  return labels === '' ? '' : element('g', textLook('start'), labels);
}

function textLook(anchor: 'start' | 'middle'): Readonly<Record<string, string | number>> {
  return { fill: 'currentColor', 'font-size': TEXT_MM, 'text-anchor': anchor, 'font-family': 'inherit' };
}
