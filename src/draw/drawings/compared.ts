/** Lengths to compare with the one drawn: plain lines on the body, each with its words to the right of its lowest point. */
import { pictured, type WornLie } from '../layout/worn.ts';
import type { Box } from '../svg/document.ts';
import { element, escapeXml, num, pair } from '../svg/text.ts';
import { TEXT_SHARE, textLook } from './landmarks.ts';

/** @property lines one under the other, the first beside the lowest point */
export type Compared = { readonly lie: WornLie; readonly lines: readonly string[] };

/** Points on half a line: as smooth as the eye asks. */
const LINE_POINTS = 40;

/** Room at the right edge for the scale of drops, in letters. */
const SCALE_ROOM = 2.6;

/** Height of a line of words, in letters. */
const LINE = 1.15;

/** The lines, under whatever is drawn after them; words that would stand on one another step down. */
export function paintCompared(all: readonly Compared[], box: Box): string {
  const textMm = box.width * TEXT_SHARE;
  const rightMm = box.x + box.width - textMm * SCALE_ROOM;
  let freeMm = -Infinity;
  let texts = '';
  let drawn = '';
  for (const { lie, lines } of all.toSorted((a, b) => a.lie.dropMm - b.lie.dropMm)) {
    // Below the leader, as the landmarks' words are below their lines.
    const yMm = Math.max(lie.dropMm + textMm, freeMm);
    freeMm = yMm + lines.length * LINE * textMm;
    drawn += strandLine(lie) + leader(lie.dropMm, rightMm);
    texts += lines
      .map((line, at) => element('text', { x: rightMm, y: yMm + at * LINE * textMm }, escapeXml(line)))
      .join('');
  }
  return drawn === '' ? '' : drawn + element('g', textLook(textMm, 'end'), texts);
}

function strandLine(lie: WornLie): string {
  let d = '';
  for (let step = -LINE_POINTS; step <= LINE_POINTS; step += 1) {
    const { xMm, yMm } = pictured(lie, (step / LINE_POINTS) * (lie.frontMm / 2));
    d += `${d === '' ? 'M' : 'L'}${num(xMm, 1)} ${num(yMm, 1)}`;
  }
  return stroked(d, 1, '3 2.4', '.7');
}

/** From the lowest point to above the words. */
function leader(dropMm: number, rightMm: number): string {
  return stroked(`M${pair(0, dropMm)}H${num(rightMm)}`, 0.4, '1 1.6', '.6');
}

function stroked(d: string, width: number, dashes: string, opacity: string): string {
  const look = { fill: 'none', stroke: 'currentColor', 'stroke-width': width, 'stroke-dasharray': dashes };
  return element('path', { d, ...look, opacity });
}
