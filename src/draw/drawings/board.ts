/** A piece laid on the bead board: zero in the middle, marks both ways as a bead board has them, the clasp on the chosen hand's side. */
import type { Design } from '#core/design/design.ts';
import type { Placed } from '#core/design/expand.ts';
import { pendantGap } from '#core/design/pendantGap.ts';
import type { ShownUnit } from '#core/units/unit.ts';
import { paintClosing } from '../paint/finding/all.ts';
import { mixInk, type Ink } from '../paint/ink/ink.ts';
import { hangLengthMm, paintHanging } from '../paint/pendant.ts';
import { paintSpots } from '../paint/bead/strand.ts';
import { layBoard, type BoardStrand } from '../layout/board.ts';
import type { Groove } from '../layout/groove.ts';
import { svgDocument, type Box, type Caption } from '../svg/document.ts';
import { element, num, pair } from '../svg/text.ts';
import { boardMarks } from './ruler.ts';
import { laySpans, numbersOf, paintSpans, type LaidSpans, type Span } from './spans.ts';

export type BoardOptions = Caption & {
  readonly unit: ShownUnit;
  /** As core advises for the hand; null (either will do) lays it left. */
  readonly claspSide: 'left' | 'right' | null;
  /** What to bracket and number of a piece laid straight; nothing where left out. */
  readonly spans?: readonly Span[];
  /** Length that the grooves are made for though the piece is shorter, mm: so that a board keeps its scale while it fills. */
  readonly leastMm?: number;
};

/** A drawing with what lies where in it: to point at beads. */
export type DrawnBoard = {
  readonly svg: string;
  /** Its view box. */
  readonly box: Box;
  /** A groove a strand, as drawn. */
  readonly strands: readonly BoardStrand[];
};

/** Between the outermost groove and its marks, mm. */
const WALL_MM = 1;

/** Below a pendant, mm. */
const ROOM_BELOW_MM = 3;

/** Height of the numbers along a bent groove, mm: its drawing is always about as wide. */
const BENT_TEXT_MM = 5;

/** Every strand in a groove of its own. */
export const drawBoard = (
  design: Design,
  sequences: readonly (readonly Placed[])[],
  options: BoardOptions,
): string => drawLaidBoard(design, sequences, options).svg;

const NOTHING: Box = { x: 0, y: 0, width: 1, height: 1 };

/** The same with where everything lies. */
export function drawLaidBoard(
  design: Design,
  sequences: readonly (readonly Placed[])[],
  options: BoardOptions,
): DrawnBoard {
  const ink = mixInk(options.idPrefix);
  const board = layBoard(design, sequences, options.claspSide ?? 'left', options.leastMm);
  const { strands, reachMm } = board;
  const last = strands.at(-1);
  if (last === undefined) return { svg: svgDocument(options, NOTHING, '', ''), box: NOTHING, strands };
  const clearMm = last.wideMm / 2 + WALL_MM;
  const textMm = last.groove.bent ? BENT_TEXT_MM : Math.max(3, reachMm / 18);
  const pendant = design.components[design.hanging?.pendant ?? ''];
  const hiddenMm = pendant === undefined ? 0 : pendant.acrossMm / 2;
  const inner = strands[0] ?? last;
  const hung = hangsAt(inner, offMiddleMm(sequences[0] ?? [], options.claspSide ?? 'left'));
  const laid = layNumbers(inner, options.spans ?? [], textMm);
  const painted =
    strands.map(({ groove, wideMm }) => paintGroove(groove, wideMm)).join('') +
    paintMarks({ outer: last, inner, reachMm, textMm, hiddenMm }, options.unit) +
    strands.map((strand) => paintLaid(ink, design, strand)).join('') +
    paintHanging(ink, design, hung.xMm, hung.yMm) +
    paintSpans(laid, -inner.wideMm / 2 - WALL_MM);
  const box = boxOf(last.groove, clearMm + textMm * 2.6, inner.wideMm, laid.heightMm);
  const hangMm = hung.yMm + hangLengthMm(design) + ROOM_BELOW_MM;
  const whole = { ...box, height: Math.max(box.height, hangMm - box.y) };
  return { svg: svgDocument(options, whole, ink.definitions(), painted), box: whole, strands };
}

/** How far to the right of zero what hangs hangs: the gap it hangs in needn't be the middle. */
function offMiddleMm(sequence: readonly Placed[], claspSide: 'left' | 'right'): number {
  const offMm = pendantGap(sequence).offMiddleMm;
  return claspSide === 'left' ? offMm : -offMm;
}

const hangsAt = ({ groove }: BoardStrand, offMm: number): { readonly xMm: number; readonly yMm: number } =>
  groove.curve.at(groove.zeroMm + offMm);

/** Numbers are read beside the list, marks beside the board: these may be smaller. */
const NUMBER_SHARE = 0.7;

function layNumbers({ groove, spots }: BoardStrand, spans: readonly Span[], textMm: number): LaidSpans {
  return laySpans(groove.bent ? [] : spans, numbersOf(spots), spots, textMm * NUMBER_SHARE);
}

function paintLaid(ink: Ink, design: Design, { spots, closing }: BoardStrand): string {
  return closing.map((spot) => paintClosing(ink, design, spot)).join('') + paintSpots(ink, spots);
}

/** The groove's line as path data; the bend is sampled, which at this size is a circle to the eye. */
function pathOf({ curve, bent }: Groove): string {
  const steps = bent ? 64 : 1;
  let d = '';
  for (let step = 0; step <= steps; step += 1) {
    const { xMm, yMm } = curve.at((curve.lengthMm * step) / steps);
    d += `${step === 0 ? 'M' : 'L'}${num(xMm, 1)} ${num(yMm, 1)}`;
  }
  return d;
}

function paintGroove(laid: Groove, wideMm: number): string {
  const d = pathOf(laid);
  const stroke = (widthMm: number, opacity: string): string =>
    element('path', {
      d,
      fill: 'none',
      stroke: 'currentColor',
      'stroke-width': widthMm,
      'stroke-linecap': 'round',
      'stroke-linejoin': 'round',
      opacity,
    });
  return stroke(wideMm + 0.6, '.16') + stroke(wideMm, '.06');
}

const MARK_SHARE = { long: 1, middle: 0.65, short: 0.4 } as const;

type Marks = {
  readonly outer: BoardStrand;
  readonly inner: BoardStrand;
  readonly reachMm: number;
  readonly textMm: number;
  /** Marks nearer zero than this would lie under the pendant, and stand inside instead, mm. */
  readonly hiddenMm: number;
};

/** Marks outside the groove, square to it, the same both ways from zero. */
function paintMarks({ outer, inner, reachMm, textMm, hiddenMm }: Marks, unit: ShownUnit): string {
  let d = '';
  let labels = '';
  const put = (atMm: number, size: keyof typeof MARK_SHARE, label: string): void => {
    const isHidden = Math.abs(atMm) < hiddenMm;
    const { groove, wideMm } = isHidden ? inner : outer;
    const { xMm, yMm, turnRad } = groove.curve.at(groove.zeroMm + atMm);
    const clearMm = wideMm / 2 + WALL_MM;
    // Travel is left to right along the bottom, so outside is a quarter turn clockwise.
    const way = isHidden ? -1 : 1;
    const outX = -way * Math.sin(turnRad);
    const outY = way * Math.cos(turnRad);
    const fromX = xMm + outX * clearMm;
    const fromY = yMm + outY * clearMm;
    const tall = textMm * 0.8 * MARK_SHARE[size];
    d += `M${pair(fromX, fromY)}l${pair(outX * tall, outY * tall)}`;
    if (label === '') return;
    labels += element(
      'text',
      { x: xMm + outX * (clearMm + textMm * 1.6), y: yMm + outY * (clearMm + textMm * 1.6) + textMm * 0.35 },
      label,
    );
  };
  for (const mark of boardMarks(reachMm, unit)) {
    put(mark.atMm, mark.size, mark.label);
    if (mark.atMm > 0) put(-mark.atMm, mark.size, mark.label);
  }
  return (
    element('path', { d, stroke: 'currentColor', 'stroke-width': textMm * 0.09, opacity: '.75' }) +
    element(
      'g',
      { fill: 'currentColor', 'font-size': textMm, 'text-anchor': 'middle', 'font-family': 'inherit' },
      labels,
    )
  );
}

function boxOf({ curve, zeroMm, bent }: Groove, outMm: number, innerMm: number, aboveMm: number): Box {
  const zero = curve.at(zeroMm);
  const end = curve.at(curve.lengthMm);
  const sideMm = bent ? outMm : outMm * 0.4;
  const top = bent ? end.yMm - innerMm / 2 - 1 : -innerMm / 2 - 3 - aboveMm;
  return {
    x: -end.xMm - sideMm,
    y: top,
    width: 2 * (end.xMm + sideMm),
    height: zero.yMm + outMm - top,
  };
}
