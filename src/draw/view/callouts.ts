/** Words beside the parts of a close-up, each with a line to its part, none over another. */
import { LETTER_SHARE } from '../svg/lines.ts';
import { element, escapeXml, num, pair } from '../svg/text.ts';

export type Callout = {
  /** None: no line either. */
  readonly words: string | undefined;
  readonly atMm: number;
  readonly side: 'above' | 'below';
};

export type Callouts = {
  readonly svg: string;
  /** How far the words reach above and below the middle line. */
  readonly reachMm: number;
};

/** A wide face's letters: words that come too near a line are worse than words a little apart. */
const WIDE_LETTER_SHARE = LETTER_SHARE * 1.1;

/** Height of a line of words, in letters. */
const LINE_SHARE = 1.5;

/**
 * @param clearMm distance from the middle line at which the picture ends and the words may start
 * @param widthMm words are kept between 0 and here
 */
export function layCallouts(
  callouts: readonly Callout[],
  clearMm: number,
  widthMm: number,
  textMm: number,
): Callouts {
  const ends: Record<Callout['side'], number[]> = { above: [], below: [] };
  let d = '';
  let texts = '';
  let reachMm = clearMm;
  const said = callouts
    .filter(({ words }) => words !== undefined)
    .toSorted((one, other) => one.atMm - other.atMm);
  for (const [at, { words = '', atMm, side }] of said.entries()) {
    const half = (words.length * textMm * WIDE_LETTER_SHARE) / 2;
    // Left of the next line on this side, so that no line runs through words.
    const nextMm = said.slice(at + 1).find((other) => other.side === side)?.atMm ?? widthMm + textMm;
    const middle = Math.max(half, Math.min(atMm, nextMm - textMm * 0.8 - half));
    const level = freeLevel(ends[side], middle - half);
    ends[side][level] = middle + half + textMm;
    const way = side === 'above' ? -1 : 1;
    const nearMm = clearMm + textMm * (0.5 + level * LINE_SHARE);
    reachMm = Math.max(reachMm, nearMm + textMm * LINE_SHARE);
    d += `M${pair(atMm, way * textMm * 0.4)}V${num(way * nearMm)}`;
    const baseline = side === 'above' ? -nearMm - textMm * 0.3 : nearMm + textMm;
    texts += element('text', { x: middle, y: baseline }, escapeXml(words));
  }
  const lines = element('path', { d, stroke: 'currentColor', 'stroke-width': textMm * 0.06, opacity: '.75' });
  const look = {
    fill: 'currentColor',
    'font-size': textMm,
    'text-anchor': 'middle',
    'font-family': 'inherit',
  };
  return { svg: lines + element('g', look, texts), reachMm };
}

/** The lowest line on which nothing stands at `fromMm` or beyond. */
function freeLevel(ends: readonly number[], fromMm: number): number {
  const found = ends.findIndex((endMm) => endMm <= fromMm);
  return found === -1 ? ends.length : found;
}
