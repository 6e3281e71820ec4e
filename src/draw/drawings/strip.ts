/**
 * A page to print: two paper tapes in inches and millimetres, and two shapes of known size that show
 * whether the printer kept the measure. One millimetre of the drawing is one of paper.
 */
import { breakLines } from '../svg/lines.ts';
import { svgDocument, type Caption } from '../svg/document.ts';
import { element, escapeXml, num } from '../svg/text.ts';
import { paintTape, TAB_MM, TAPE_WIDE_MM } from './tape.ts';

export type Paper = 'a4' | 'letter';

/** Width and height. A4: ISO 216. US Letter: 8½ × 11 in (ANSI/ASME Y14.1, size A). */
export const PAPER_MM: Readonly<Record<Paper, readonly [number, number]>> = {
  a4: [210, 297],
  letter: [215.9, 279.4],
};

/** A bank card: ISO/IEC 7810, ID-1; its corners are rounded by 2.88 to 3.48 mm. */
export const CARD_MM = { width: 85.6, height: 53.98, corner: 3.18 } as const;

/** The bar to hold a ruler against. */
export const BAR_MM = 100;

/** Printers leave this much of the edge white (common practice, no source). */
const MARGIN_MM = 12;

/** The second tape starts this far before the first one ends, to be stuck over it. */
const OVERLAP_MM = 15;

const TEXT_MM = 3.9;
const LINE_MM = TEXT_MM * 1.36;
const HEADING_MM = 7;

export type StripWords = {
  readonly heading: string;
  /** What to do, one sentence or two each. */
  readonly steps: readonly string[];
  /** Beside the bar, and in the card's outline. */
  readonly bar: string;
  readonly card: string;
  /** That a page fitted to the paper measures wrong. */
  readonly caution: string;
  /** Where the first tape's zero goes, and that the second is stuck to the first. */
  readonly first: string;
  readonly second: string;
};

export type StripOptions = Caption & { readonly paper: Paper; readonly words: StripWords };

/** Length of each of the two tapes on that paper, mm. */
export function tapeLengthMm(paper: Paper): number {
  return Math.floor((PAPER_MM[paper][1] - 2 * MARGIN_MM - TAB_MM) / 10) * 10;
}

export function drawMeasuringStrip(options: StripOptions): string {
  const { paper, words } = options;
  const [widthMm, heightMm] = PAPER_MM[paper];
  const lengthMm = tapeLengthMm(paper);
  const secondX = widthMm - MARGIN_MM - TAPE_WIDE_MM;
  const firstX = secondX - TAPE_WIDE_MM - 5;
  const columnMm = firstX - MARGIN_MM - 8;
  const tapes =
    paintTape({ x: firstX, y: MARGIN_MM, fromMm: 0, toMm: lengthMm, label: words.first }) +
    paintTape({
      x: secondX,
      y: MARGIN_MM,
      fromMm: lengthMm - OVERLAP_MM,
      toMm: 2 * lengthMm - OVERLAP_MM,
      label: words.second,
    });
  const text = paintText(words, columnMm);
  const checks = paintChecks(words, heightMm - MARGIN_MM, columnMm);
  const content = element('g', { fill: 'currentColor', 'font-family': 'inherit' }, text + tapes + checks);
  return svgDocument(options, { x: 0, y: 0, width: widthMm, height: heightMm }, '', content, true);
}

function paintText({ heading, steps, caution }: StripWords, columnMm: number): string {
  let y = MARGIN_MM + HEADING_MM;
  let drawn = '';
  for (const line of breakLines(heading, columnMm, HEADING_MM)) {
    drawn += textAt(MARGIN_MM, y, HEADING_MM, line);
    y += HEADING_MM * 1.25;
  }
  y += LINE_MM * 0.4;
  for (const [at, step] of steps.entries()) {
    drawn += textAt(MARGIN_MM, y, TEXT_MM, `${at + 1}.`);
    for (const line of breakLines(step, columnMm - 7, TEXT_MM)) {
      drawn += textAt(MARGIN_MM + 7, y, TEXT_MM, line);
      y += LINE_MM;
    }
    y += LINE_MM * 0.35;
  }
  y += LINE_MM * 0.4;
  for (const line of breakLines(caution, columnMm, TEXT_MM)) {
    drawn += textAt(MARGIN_MM, y, TEXT_MM, line, 'bold');
    y += LINE_MM;
  }
  return drawn;
}

/** The bar and the card, from the bottom of the column up. */
function paintChecks(words: StripWords, bottomMm: number, columnMm: number): string {
  const cardY = bottomMm - CARD_MM.height;
  const barY = cardY - 18;
  const card =
    element('rect', {
      x: MARGIN_MM,
      y: cardY,
      width: CARD_MM.width,
      height: CARD_MM.height,
      rx: CARD_MM.corner,
      fill: 'none',
      stroke: 'currentColor',
      'stroke-width': 0.2,
    }) + linesAt(words.card, MARGIN_MM + 6, cardY + 10, CARD_MM.width - 12);
  const bar =
    element('rect', { x: MARGIN_MM, y: barY, width: BAR_MM, height: 3 }) +
    linesAt(words.bar, MARGIN_MM, barY + 3 + LINE_MM, columnMm);
  return card + bar;
}

function linesAt(text: string, x: number, y: number, widthMm: number): string {
  return breakLines(text, widthMm, TEXT_MM)
    .map((line, at) => textAt(x, y + at * LINE_MM, TEXT_MM, line))
    .join('');
}

function textAt(x: number, y: number, sizeMm: number, text: string, weight?: 'bold'): string {
  return element('text', { x, y, 'font-size': num(sizeMm), 'font-weight': weight }, escapeXml(text));
}
