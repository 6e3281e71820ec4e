/** A necklace on a body: neck, shoulders and chest from the front, and the strand lying as computed. */
import type { Figure } from '#core/body/figure.ts';
import type { Sex } from '#core/body/neckBase.ts';
import type { Design } from '#core/design/design.ts';
import type { Placed } from '#core/design/expand.ts';
import type { ShownUnit } from '#core/units/unit.ts';
import { mixInk, type Ink } from '../paint/ink/ink.ts';
import { paintHanging } from '../paint/pendant.ts';
import { paintSpots } from '../paint/bead/strand.ts';
import { outlineOf, type Outline } from '../layout/figure.ts';
import { pictured, placeWorn, type WornLie } from '../layout/worn.ts';
import { svgDocument, type Box, type Caption } from '../svg/document.ts';
import { element, num, pair } from '../svg/text.ts';
import { paintCompared, type Compared } from './compared.ts';
import { paintDropScale, paintLandmarks, type LandmarkLabels } from './landmarks.ts';

/** One strand, as `expand` gives it, and where core says that it lies. */
export type WornStrand = { readonly sequence: readonly Placed[]; readonly lie: WornLie };

export type BodyOptions = Caption & {
  readonly figure: Figure;
  readonly sex: Sex;
  readonly unit: ShownUnit;
  readonly labels: LandmarkLabels;
  /** Other lengths to compare with. */
  readonly compared?: readonly Compared[];
  /** Keeps the view from jumping while a length is dragged: how far below the pit it goes, mm. */
  readonly bottomMm?: number;
};

/** Least depth below the pit that is shown, and room below the lowest bead, mm. */
const LEAST_DEPTH_MM = 150;
const ROOM_BELOW_MM = 40;

/** Half the width shown, as a share of the height: shoulders may run out of the picture, so that beads stay large. */
const HALF_WIDTH_SHARE = 0.6;

/** What `drawBody` will show, so that a place on the screen can be turned into one on the body. */
export function bodyBox(figure: Figure, sex: Sex, lies: readonly WornLie[], bottomMm?: number): Box {
  const depthMm = bottomMm ?? depthOf(lies);
  const { halfWidthMm, topMm } = outlineOf(figure, sex, depthMm);
  const half = Math.min(halfWidthMm * 1.06, (depthMm - topMm) * HALF_WIDTH_SHARE);
  return { x: -half, y: topMm, width: 2 * half, height: depthMm - topMm };
}

function depthOf(lies: readonly WornLie[]): number {
  const lowest = lies.map((lie) => (lie.pendantDropMm ?? lie.dropMm) + ROOM_BELOW_MM);
  return Math.max(LEAST_DEPTH_MM, ...lowest);
}

/**
 * The strands in front and behind, the outermost last. The origin is the pit of the neck.
 * Draws the body alone where there is no strand.
 */
export function drawBody(design: Design, strands: readonly WornStrand[], options: BodyOptions): string {
  const { figure, sex } = options;
  const ink = mixInk(options.idPrefix);
  const compared = options.compared ?? [];
  const lies = [...strands, ...compared].map(({ lie }) => lie);
  const box = bodyBox(figure, sex, lies, options.bottomMm);
  const outline = outlineOf(figure, sex, box.y + box.height);
  const worn = strands.map(({ sequence, lie }) => placeWorn(sequence, lie));
  const behind = worn.map((strand) => paintSpots(ink, strand.behind)).join('');
  const front = worn.map((strand) => paintSpots(ink, strand.front)).join('');
  const first = strands[0];
  const content =
    paintLandmarks(figure, box, options.labels) +
    paintOutline(ink, outline) +
    paintCompared(compared, box) +
    element('g', { 'clip-path': ink.clip(allBut(outline.neck, box)) }, behind) +
    front +
    (first === undefined ? '' : paintHung(ink, design, first.lie)) +
    paintDropScale(box, options.unit);
  return svgDocument(options, box, ink.definitions(), content);
}

/** Everything in the box that the neck doesn't hide. */
function allBut(neck: string, { x, y, width, height }: Box): string {
  const all = `M${pair(x, y)}h${num(width)}v${num(height)}h${num(-width)}Z`;
  return element('path', { d: all + neck, 'clip-rule': 'evenodd' });
}

/** Calm lines and a breath of shade in the page's own ink: any skin, no face. */
function paintOutline(ink: Ink, { mass, contour, detail }: Outline): string {
  const shade = ink.paint({
    form: 'linear',
    from: [0, 0],
    to: [1, 0.4],
    stops: [
      { at: 0, colour: 'currentColor', opacity: 0.03 },
      { at: 1, colour: 'currentColor', opacity: 0.1 },
    ],
  });
  const stroke = (d: string, widthMm: number, opacity: string): string =>
    element('path', {
      d,
      fill: 'none',
      stroke: 'currentColor',
      'stroke-width': widthMm,
      'stroke-linecap': 'round',
      opacity,
    });
  return element('path', { d: mass, fill: shade }) + stroke(contour, 0.8, '.6') + stroke(detail, 0.55, '.3');
}

function paintHung(ink: Ink, design: Design, lie: WornLie): string {
  if (design.hanging === null) return '';
  const { yMm } = pictured(lie, 0);
  return paintHanging(ink, design, 0, yMm);
}
