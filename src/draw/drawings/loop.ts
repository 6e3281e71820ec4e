/** A piece closed, seen along the arm: the cylinder it passes round and the beads lifted off it. */
import type { Design } from '#core/design/design.ts';
import type { Placed } from '#core/design/expand.ts';
import { mixInk } from '../paint/ink/ink.ts';
import { placeLoops } from '../layout/loops.ts';
import { svgDocument, type Caption } from '../svg/document.ts';
import { element } from '../svg/text.ts';
import { paintLoop, paintLoopHanging, boxRound } from './closed.ts';

const MARGIN_MM = 3;

export type LoopOptions = Caption & { readonly lifeSize?: boolean };

/** Every strand closed; the largest cylinder inside the first is dashed, the other strands lie behind it. */
export function drawLoop(
  design: Design,
  sequences: readonly (readonly Placed[])[],
  options: LoopOptions,
): string {
  const ink = mixInk(options.idPrefix);
  const { loops, insideMm } = placeLoops(design, sequences);
  const painted = loops.toReversed().map((placed) => paintLoop(ink, design, placed));
  const cylinder = element('circle', {
    r: insideMm,
    fill: 'none',
    stroke: 'currentColor',
    'stroke-width': 0.3,
    'stroke-dasharray': '1.6 1.2',
    opacity: '.6',
  });
  const hung = paintLoopHanging(ink, design, loops);
  const box = boxRound(design, loops, 1, MARGIN_MM);
  const content = cylinder + painted.join('') + hung;
  return svgDocument(options, box, ink.definitions(), content, options.lifeSize ?? false);
}
