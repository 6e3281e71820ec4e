/** A bracelet on its wrist, seen along the arm: how much air there is. */
import type { Design } from '#core/design/design.ts';
import type { Placed } from '#core/design/expand.ts';
import { mixInk } from '../paint/ink/ink.ts';
import { placeLoops } from '../layout/loops.ts';
import { svgDocument, type Box, type Caption } from '../svg/document.ts';
import { element, escapeXml, num, pair } from '../svg/text.ts';
import { paintLoop, paintLoopHanging, boxRound } from './closed.ts';

const MARGIN_MM = 4;

/** Height of the words as a share of the drawing's width: legible at 360 px. */
const TEXT_SHARE = 1 / 25;

export type WristLabels = {
  /** e.g. "wrist 16.5 cm". */
  readonly girth: string;
  /** By how much the inside of the bracelet is longer than that. */
  readonly ease: string;
  /** Beside the gap, e.g. "4 mm of air". */
  readonly air: string;
};

export type WristOptions = Caption & {
  /** Girth of wrist, ankle or neck, mm. */
  readonly girthMm: number;
  /** What stands on the wrist; no words where left out. */
  readonly labels?: WristLabels;
  readonly lifeSize?: boolean;
};

/**
 * The clear width (mm) below a round wrist that a bracelet of that inside girth rests on: the ease, laid
 * across. Negative where the bracelet is too small.
 */
export function airMm(insideGirthMm: number, girthMm: number): number {
  return (insideGirthMm - girthMm) / Math.PI;
}

/** The wrist is drawn round, as the fit takes it to be; the bracelet rests on its top, the air is below. */
export function drawWrist(
  design: Design,
  sequences: readonly (readonly Placed[])[],
  options: WristOptions,
): string {
  const ink = mixInk(options.idPrefix);
  const { loops, insideMm } = placeLoops(design, sequences);
  const [first, ...behind] = loops.map((placed) => paintLoop(ink, design, placed));
  const wristMm = options.girthMm / (2 * Math.PI);
  const dropMm = insideMm > 0 ? insideMm - wristMm : 0;
  const box = boxRound(design, loops, wristMm, MARGIN_MM);
  const textMm = box.width * TEXT_SHARE;
  const { labels } = options;
  const wrist =
    paintWrist(wristMm, -dropMm) + (labels === undefined ? '' : paintGirth(labels, -dropMm, textMm));
  const hidden = behind.length > 0 ? ink.clip(allBut(wristMm, -dropMm, box)) : '';
  const back = hidden === '' ? '' : element('g', { 'clip-path': hidden }, behind.toReversed().join(''));
  const gap = dropMm > 0 ? paintAir(insideMm, 2 * dropMm, labels?.air ?? '', textMm) : '';
  const content = back + wrist + gap + (first ?? '') + paintLoopHanging(ink, design, loops);
  return svgDocument(options, box, ink.definitions(), content, options.lifeSize ?? false);
}

/** Everything in the box but the wrist, which hides what lies behind it. */
function allBut(radiusMm: number, yMm: number, { x, y, width, height }: Box): string {
  const r = num(radiusMm);
  const box = `M${pair(x, y)}h${num(width)}v${num(height)}h${num(-width)}Z`;
  const round = `M${pair(-radiusMm, yMm)}a${r} ${r} 0 1 0 ${num(2 * radiusMm)} 0a${r} ${r} 0 1 0 ${num(-2 * radiusMm)} 0Z`;
  return element('path', { d: box + round, 'clip-rule': 'evenodd' });
}

/** Calm line work in the page's own ink: any skin. */
function paintWrist(radiusMm: number, yMm: number): string {
  return element('circle', {
    cy: yMm,
    r: radiusMm,
    fill: 'currentColor',
    'fill-opacity': '.07',
    stroke: 'currentColor',
    'stroke-width': 0.4,
    'stroke-opacity': '.55',
  });
}

/** A measure across the gap, from the wrist down to the inside of the bracelet. */
function paintAir(insideMm: number, tallMm: number, label: string, textMm: number): string {
  const tick = textMm * 0.35;
  const d =
    `M${pair(-tick, insideMm)}H${num(tick)}M${pair(-tick, insideMm - tallMm)}H${num(tick)}` +
    `M${pair(0, insideMm - tallMm)}V${num(insideMm)}`;
  const measure = element('path', { d, stroke: 'currentColor', 'stroke-width': 0.35, fill: 'none' });
  return label === '' ? measure : measure + paintWords([label], insideMm - tallMm - textMm * 0.7, textMm);
}

/** In the middle of the wrist. */
function paintGirth({ girth, ease }: WristLabels, yMm: number, textMm: number): string {
  return paintWords([girth, ease], yMm - textMm * 0.3, textMm);
}

/** Lines one below the other, the first one's baseline at `yMm`. */
function paintWords(lines: readonly string[], yMm: number, textMm: number): string {
  const look = {
    fill: 'currentColor',
    'font-size': textMm,
    'text-anchor': 'middle',
    'font-family': 'inherit',
  };
  const texts = lines.map((line, at) => element('text', { y: yMm + at * textMm * 1.4 }, escapeXml(line)));
  return element('g', look, texts.join(''));
}
