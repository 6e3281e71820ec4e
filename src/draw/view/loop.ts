/** A piece closed, seen along the arm: the cylinder it passes round and the beads lifted off it. */
import type { Design } from '#core/strand/design.ts';
import type { Placed } from '#core/strand/expand.ts';
import { mixInk } from '../paint/ink.ts';
import { placeLoop } from '../place/loop.ts';
import { svgDocument, type Caption } from '../svg/document.ts';
import { element } from '../svg/text.ts';
import { paintLoop, squareRound } from './closed.ts';

const MARGIN_MM = 3;

export type LoopOptions = Caption & { readonly lifeSize?: boolean };

/** Every strand closed round its own largest cylinder, which is dashed; the first strand in front. */
export function drawLoop(
  design: Design,
  sequences: readonly (readonly Placed[])[],
  options: LoopOptions,
): string {
  const ink = mixInk(options.idPrefix);
  const loops = sequences.map((sequence) => placeLoop(design, sequence));
  const painted = loops.toReversed().map((placed) => paintLoop(ink, design, placed));
  const insideMm = Math.min(...loops.map(({ loop }) => loop.radiusMm));
  const cylinder = element('circle', {
    r: Number.isFinite(insideMm) ? insideMm : 0,
    fill: 'none',
    stroke: 'currentColor',
    'stroke-width': 0.3,
    'stroke-dasharray': '1.6 1.2',
    opacity: '.6',
  });
  const box = squareRound(loops, 1, MARGIN_MM);
  return svgDocument(options, box, ink.definitions(), cylinder + painted.join(''), options.lifeSize ?? false);
}
