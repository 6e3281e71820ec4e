/** The outline of a body from the front, from core's figure. The origin is the pit of the neck, y down, mm. */
import { meanOf, type Figure } from '#core/body/figure.ts';
import type { Sex } from '#core/body/neckBase.ts';
import { num, pair } from '../svg/text.ts';

/** Neck breadth over girth/π: 0.92 to 0.94 in the oldest group of Snyder et al., UM-HSRI-77-17, 1977. */
const NECK_BREADTH_SHARE = 0.93;

/** Outside of the arm over half the shoulder breadth. Drawn by eye; nothing is measured by it. */
const ARM_SHARE = 1.2;

export type Outline = {
  /** All of the body that is in the picture, closed: to be filled. */
  readonly mass: string;
  /** Its two sides, open at the top and the bottom. */
  readonly contour: string;
  /** Collar bones, the cords of the neck, armpits: thin lines. */
  readonly detail: string;
  /** The neck alone, closed: hides what lies behind it. */
  readonly neck: string;
  readonly halfWidthMm: number;
  readonly topMm: number;
};

type Point = readonly [number, number];

/** Half the breadth between the shoulder points: the group's mean, in proportion to this neck base. */
function halfShoulders(figure: Figure, sex: Sex): number {
  return (meanOf(sex, 'shoulderBreadthMm').mm * figure.neckBase.mm) / meanOf(sex, 'neckBaseGirthMm').mm / 2;
}

/** The measures that all lines are drawn by. */
type Frame = {
  readonly neckHalf: number;
  readonly baseHalf: number;
  /** Height of the points where the neck meets the shoulders. */
  readonly sideY: number;
  readonly shoulder: number;
  readonly arm: number;
  readonly topY: number;
  readonly bottomY: number;
};

/** @param bottomMm how far below the pit the drawing goes */
export function outlineOf(figure: Figure, sex: Sex, bottomMm: number): Outline {
  const shoulder = halfShoulders(figure, sex);
  const sideY = -figure.napeAbovePit.mm / 2;
  const frame: Frame = {
    neckHalf: (figure.neckGirth.mm / Math.PI / 2) * NECK_BREADTH_SHARE,
    baseHalf: figure.neckBase.mm / Math.PI / 2,
    sideY,
    shoulder,
    arm: shoulder * ARM_SHARE,
    topY: sideY - figure.neckGirth.mm * 0.24,
    bottomY: Math.max(bottomMm, shoulder * 0.9),
  };
  const right = sideOf(frame);
  const left = right.map(([x, y]): Point => [-x, y]);
  return {
    mass: `${curves(left.toReversed())}L${curves(right).slice(1)}Z`,
    contour: curves(left) + curves(right),
    detail: detailOf(frame, 1) + detailOf(frame, -1),
    neck: neckOf(frame),
    halfWidthMm: frame.arm * 1.02,
    topMm: frame.topY,
  };
}

/** The right side from the top of the neck down: a start and then three points a cubic curve. */
function sideOf({ neckHalf, baseHalf, sideY, shoulder, arm, topY, bottomY }: Frame): Point[] {
  return [
    [neckHalf * 1.04, topY],
    [neckHalf * 0.97, topY * 0.7 + sideY * 0.3],
    [neckHalf * 0.95, sideY - baseHalf * 0.55],
    [neckHalf * 1.06, sideY - baseHalf * 0.24],
    [neckHalf * 1.18, sideY + baseHalf * 0.04],
    [baseHalf * 1.5, sideY * 0.78],
    [shoulder * 0.72, sideY * 0.42],
    [shoulder * 0.88, sideY * 0.22],
    [shoulder * 1.02, sideY * 0.02],
    [shoulder * 1.09, shoulder * 0.2],
    [arm * 0.99, shoulder * 0.38],
    [arm * 0.985, shoulder * 0.6],
    [arm * 1.0, shoulder * 0.9],
    [arm * 1.0, shoulder * 0.9],
    [arm * 1.0, shoulder * 0.9],
    [arm * 1.02, bottomY],
  ];
}

/** Path data of a start and cubic curves through the rest. */
function curves(points: readonly Point[]): string {
  let d = '';
  for (const [at, [x, y]] of points.entries()) {
    d += at === 0 ? 'M' : at % 3 === 1 ? 'C' : ' ';
    d += pair(x, y);
  }
  return d;
}

function detailOf({ neckHalf, baseHalf, sideY, shoulder, bottomY }: Frame, way: 1 | -1): string {
  const at = (x: number, y: number): string => pair(way * x, y);
  const armpitY = shoulder * 0.62;
  const collarBone =
    `M${at(baseHalf * 0.17, 3)}C${at(baseHalf * 0.5, -3)} ${at(baseHalf * 0.9, 9)} ${at(shoulder * 0.55, 1)}` +
    `S${at(shoulder * 0.82, sideY * 0.3)} ${at(shoulder * 0.93, sideY * 0.1)}`;
  const cord = `M${at(neckHalf * 0.86, sideY - baseHalf * 0.9)}C${at(neckHalf * 0.74, sideY - baseHalf * 0.3)} ${at(baseHalf * 0.34, sideY * 0.5)} ${at(baseHalf * 0.12, 1)}`;
  const endY = Math.min(bottomY, armpitY + shoulder * 1.5);
  const armpit =
    bottomY > armpitY + shoulder * 0.1
      ? `M${at(shoulder * 0.98, armpitY - shoulder * 0.1)}C${at(shoulder * 0.88, armpitY + shoulder * 0.02)} ${at(shoulder * 0.86, armpitY + shoulder * 0.3)} ${at(shoulder * 0.79, endY)}`
      : '';
  return collarBone + cord + armpit;
}

/** Down to a little below the line on which a strand goes round, so that it covers what is behind. */
function neckOf({ neckHalf, baseHalf, sideY, topY }: Frame): string {
  const topOut = topY - 100;
  return (
    `M${pair(-neckHalf * 1.04, topOut)}L${pair(-neckHalf * 0.96, sideY - baseHalf * 0.5)}L${pair(-neckHalf * 1.06, sideY - baseHalf * 0.24)}` +
    `L${pair(-baseHalf, sideY)}H${num(baseHalf)}L${pair(neckHalf * 1.06, sideY - baseHalf * 0.24)}` +
    `L${pair(neckHalf * 0.96, sideY - baseHalf * 0.5)}L${pair(neckHalf * 1.04, topOut)}Z`
  );
}
