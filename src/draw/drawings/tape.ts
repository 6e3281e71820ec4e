/** One paper tape: millimetres up its left edge, inches up its right. */
import { INCH_MM } from '#core/units/unit.ts';
import { breakLines } from '../svg/lines.ts';
import { element, escapeXml, num, pair } from '../svg/text.ts';

/** Wide enough for both scales' numbers side by side, narrow enough to lie flat round a wrist. */
export const TAPE_WIDE_MM = 23;

const MARK_MM = { long: 6, middle: 4.2, short: 2.6 } as const;

const TEXT_MM = 2.8;

/** Paper beyond the scale: a little above it, and at its lower end a tab with words, to hold it by. */
const ABOVE_MM = 3;
export const TAB_MM = 16;

export type Tape = {
  /** Upper left corner of the cut line. */
  readonly x: number;
  readonly y: number;
  /** The scale's first and last millimetre; the first lies at the lower end. */
  readonly fromMm: number;
  readonly toMm: number;
  /** In the tab at its lower end. */
  readonly label: string;
};

export function paintTape(tape: Tape): string {
  const lengthMm = tape.toMm - tape.fromMm;
  const cut = element('rect', {
    x: tape.x,
    y: tape.y,
    width: TAPE_WIDE_MM,
    height: lengthMm + TAB_MM,
    fill: 'none',
    stroke: 'currentColor',
    'stroke-width': 0.12,
    'stroke-dasharray': '1.2 1',
  });
  return cut + marksOf(tape, 'mm') + marksOf(tape, 'in') + labelOf(tape);
}

/** Height on the page of a place on the scale. */
function heightOf({ y, toMm }: Tape, atMm: number): number {
  return y + ABOVE_MM + toMm - atMm;
}

function marksOf(tape: Tape, unit: 'mm' | 'in'): string {
  const stepMm = unit === 'mm' ? 1 : INCH_MM / 8;
  const way = unit === 'mm' ? 1 : -1;
  const edge = unit === 'mm' ? tape.x : tape.x + TAPE_WIDE_MM;
  let d = '';
  let texts = '';
  for (let step = Math.ceil(tape.fromMm / stepMm - 1e-9); step * stepMm <= tape.toMm + 1e-9; step += 1) {
    const y = heightOf(tape, step * stepMm);
    const size = sizeOf(step, unit);
    d += `M${pair(edge, y)}h${num(way * MARK_MM[size])}`;
    const label = unit === 'mm' ? numberEvery(step, 10) : numberEvery(step / 8, 1);
    if (label === '') continue;
    texts += element('text', { x: edge + way * (MARK_MM.long + 0.5), y: y + TEXT_MM * 0.36 }, label);
  }
  const marks = element('path', { d, stroke: 'currentColor', 'stroke-width': 0.14, fill: 'none' });
  const anchor = unit === 'mm' ? 'start' : 'end';
  return marks + element('g', { 'font-size': TEXT_MM, 'text-anchor': anchor }, texts);
}

function sizeOf(step: number, unit: 'mm' | 'in'): keyof typeof MARK_MM {
  if (unit === 'mm') return step % 10 === 0 ? 'long' : step % 5 === 0 ? 'middle' : 'short';
  return step % 8 === 0 ? 'long' : step % 4 === 0 ? 'middle' : 'short';
}

/** The zero line is named in the tab, where no mark strikes it through. */
function numberEvery(value: number, every: number): string {
  return value !== 0 && value % every === 0 ? String(value) : '';
}

/** In the tab below the scale's lower end, which is marked right across. */
function labelOf(tape: Tape): string {
  const lowMm = heightOf(tape, tape.fromMm);
  const line = element('path', {
    d: `M${pair(tape.x, lowMm)}h${num(TAPE_WIDE_MM)}`,
    stroke: 'currentColor',
    'stroke-width': 0.3,
  });
  const words = breakLines(tape.label, TAPE_WIDE_MM - 1, TEXT_MM).map((words, at) =>
    element(
      'text',
      { x: tape.x + TAPE_WIDE_MM / 2, y: lowMm + TEXT_MM * (1.25 + at * 1.2) },
      escapeXml(words),
    ),
  );
  return line + element('g', { 'font-size': TEXT_MM, 'text-anchor': 'middle' }, words.join(''));
}
