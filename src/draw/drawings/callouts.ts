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
  /** How far the words reach to the right. */
  readonly rightMm: number;
};

/** Words where they stand: their left and right edge, and how many lines of words lie nearer the picture. */
type Laid = { readonly words: string; readonly atMm: number; readonly left: number; readonly right: number };
type Levelled = Laid & { readonly level: number };

/** A wide face's letters: words that come too near a line are worse than words a little apart. */
const WIDE_LETTER_SHARE = LETTER_SHARE * 1.1;

/** Height of a line of words, and what stays free between words and a line beside them, in letters. */
const LINE_SHARE = 1.5;
const CLEAR_SHARE = 0.8;

/** The words of one side from left to right, over their lines where there is room, else pushed off the lines beside them. */
function layWords(callouts: readonly Callout[], widthMm: number, textMm: number): Laid[] {
  const clear = textMm * CLEAR_SHARE;
  const said = callouts.flatMap(({ words, atMm }) => (words === undefined ? [] : [{ words, atMm }]));
  const sorted = said.toSorted((one, other) => one.atMm - other.atMm);
  return sorted.map(({ words, atMm }, at) => {
    const wide = words.length * textMm * WIDE_LETTER_SHARE;
    const before = sorted[at - 1];
    const least = before === undefined ? 0 : before.atMm + clear;
    const most = (sorted[at + 1]?.atMm ?? widthMm + clear) - clear - wide;
    const left = Math.max(least, Math.min(atMm - wide / 2, most));
    return { words, atMm, left, right: left + wide };
  });
}

/**
 * A level for each, so that no line runs through words: none stands over the
 * line before it, so words that reach over the next ones go above them.
 */
function level(laid: readonly Laid[], clearMm: number): Levelled[] {
  const levelled: Levelled[] = [];
  for (const one of laid.toReversed()) {
    const under = levelled.filter((other) => Math.min(other.left, other.atMm) < one.right + clearMm);
    levelled.push({ ...one, level: Math.max(-1, ...under.map((other) => other.level)) + 1 });
  }
  return levelled;
}

/**
 * @param clearMm distance from the middle line at which the picture ends and the words may start
 * @param widthMm words are kept right of 0, and left of here where they can be
 */
export function layCallouts(
  callouts: readonly Callout[],
  clearMm: number,
  widthMm: number,
  textMm: number,
): Callouts {
  let d = '';
  let texts = '';
  let reachMm = clearMm;
  let rightMm = widthMm;
  for (const side of ['above', 'below'] as const) {
    const way = side === 'above' ? -1 : 1;
    const own = callouts.filter((callout) => callout.side === side);
    for (const said of level(layWords(own, widthMm, textMm), textMm * CLEAR_SHARE)) {
      const nearMm = clearMm + textMm * (0.5 + said.level * LINE_SHARE);
      reachMm = Math.max(reachMm, nearMm + textMm * LINE_SHARE);
      rightMm = Math.max(rightMm, said.right);
      d += `M${pair(said.atMm, way * textMm * 0.4)}V${num(way * nearMm)}`;
      const baseline = side === 'above' ? -nearMm - textMm * 0.3 : nearMm + textMm;
      texts += element('text', { x: (said.left + said.right) / 2, y: baseline }, escapeXml(said.words));
    }
  }
  const lines = element('path', { d, stroke: 'currentColor', 'stroke-width': textMm * 0.06, opacity: '.75' });
  const look = {
    fill: 'currentColor',
    'font-size': textMm,
    'text-anchor': 'middle',
    'font-family': 'inherit',
  };
  return { svg: lines + element('g', look, texts), reachMm, rightMm };
}
