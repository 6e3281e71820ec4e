/** A piece laid on the bead board: zero in the middle, marks both ways, the clasp on the chosen hand's side. */
import type { Design } from '#core/strand/design.ts';
import { finishedLengthMm } from '#core/strand/parts.ts';
import type { Placed } from '#core/strand/expand.ts';
import { paintClosing } from '../paint/finding/all.ts';
import { mixInk, type Ink } from '../paint/ink.ts';
import { paintSpots } from '../paint/strand.ts';
import { placeAlong } from '../place/along.ts';
import { claspEnd, placeEndAlong, ringEnd } from '../place/closing.ts';
import { groove, type Groove } from '../place/groove.ts';
import { toParts, turnedRound } from '../place/spot.ts';
import { svgDocument, type Box, type Caption } from '../svg/document.ts';
import { element, num, pair } from '../svg/text.ts';
import { rulerMarks, type RulerUnit } from './ruler.ts';

export type BoardOptions = Caption & {
  readonly unit: RulerUnit;
  /** As core advises for the hand; null (either will do) lays it left. */
  readonly claspSide: 'left' | 'right' | null;
};

/** Room in a groove beside its fattest bead, and between two grooves, mm. */
const GROOVE_ROOM_MM = 2.4;
const GROOVE_WALL_MM = 2;

/** Marks run on a little past the piece, as they do on a board. */
const SPARE_MM = 14;

/** Lays every strand in a groove of its own, outermost last. */
export function drawBoard(
  design: Design,
  sequences: readonly (readonly Placed[])[],
  options: BoardOptions,
): string {
  const ink = mixInk(options.idPrefix);
  const longestMm = Math.max(1, ...sequences.map((sequence) => finishedLengthMm(design, sequence)));
  const claspSide = options.claspSide ?? 'left';
  let grooves = '';
  let strands = '';
  let outMm = 0;
  let before = 0;
  let last: Groove = groove(longestMm + SPARE_MM * 2, 0);
  for (const [at, sequence] of sequences.entries()) {
    const wideMm = fattestOf(sequence) + GROOVE_ROOM_MM;
    if (at > 0) outMm += (before + wideMm) / 2 + GROOVE_WALL_MM;
    before = wideMm;
    last = groove(longestMm + SPARE_MM * 2, outMm);
    grooves += paintGroove(last, wideMm);
    strands += paintLaid(ink, design, sequence, claspSide, last);
  }
  const clearMm = before / 2 + GROOVE_WALL_MM / 2;
  const textMm = last.bent ? 5 : Math.max(3, longestMm / 38);
  const marks = paintMarks(last, clearMm, longestMm / 2 + SPARE_MM, textMm, options.unit);
  const box = boxOf(last, clearMm + textMm * 2.6, fattestOf(sequences[0] ?? []));
  return svgDocument(options, box, ink.definitions(), grooves + marks + strands);
}

function fattestOf(sequence: readonly Placed[]): number {
  return Math.max(2, ...sequence.map(({ component }) => component.acrossMm));
}

function paintLaid(
  ink: Ink,
  design: Design,
  sequence: readonly Placed[],
  claspSide: 'left' | 'right',
  { curve, zeroMm }: Groove,
): string {
  const parts = toParts(sequence);
  const laid = placeAlong(claspSide === 'left' ? parts : turnedRound(parts), curve, zeroMm);
  const [left, right] =
    claspSide === 'left' ? [claspEnd(design), ringEnd(design)] : [ringEnd(design), claspEnd(design)];
  const closing = [
    ...placeEndAlong(left, curve, laid.fromMm, 1),
    ...placeEndAlong(right, curve, laid.toMm, -1),
  ];
  return closing.map((spot) => paintClosing(ink, design, spot)).join('') + paintSpots(ink, laid.spots);
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

/** Marks outside the groove, square to it, the same both ways from zero. */
function paintMarks(
  { curve, zeroMm }: Groove,
  clearMm: number,
  reachMm: number,
  textMm: number,
  unit: RulerUnit,
): string {
  let d = '';
  let labels = '';
  const put = (atMm: number, size: keyof typeof MARK_SHARE, label: string): void => {
    const { xMm, yMm, turnRad } = curve.at(zeroMm + atMm);
    // Travel is left to right along the bottom, so outside is a quarter turn clockwise.
    const outX = -Math.sin(turnRad);
    const outY = Math.cos(turnRad);
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
  for (const mark of rulerMarks(reachMm, unit)) {
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

function boxOf({ curve, zeroMm, bent }: Groove, outMm: number, fattestMm: number): Box {
  const zero = curve.at(zeroMm);
  const end = curve.at(curve.lengthMm);
  const sideMm = bent ? outMm : outMm * 0.4;
  const top = bent ? end.yMm - fattestMm / 2 - 2 : -fattestMm / 2 - 4;
  return {
    x: -end.xMm - sideMm,
    y: top,
    width: 2 * (end.xMm + sideMm),
    height: zero.yMm + outMm - top,
  };
}
