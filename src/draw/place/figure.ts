/** The outline of a body from the front, from core's figure. The origin is the pit of the neck, y down, mm. */
import { meanOf, type Figure } from '#core/body/figure.ts';
import type { Sex } from '#core/body/neckBase.ts';
import { pair } from '../svg/text.ts';

/** Neck breadth over girth/π: 0.92 to 0.94 in the oldest group of Snyder et al., UM-HSRI-77-17, 1977. */
const NECK_BREADTH_SHARE = 0.93;

/** From shoulder point to the outside of the arm, over the shoulder breadth. Drawn by eye; nothing is measured by it. */
const ARM_SHARE = 0.115;

export type Outline = {
  /** Neck, shoulders and arms, open at the top and the bottom. */
  readonly contour: string;
  /** Collar bones, armpits: thin lines. */
  readonly detail: string;
  /** The neck alone, closed: hides what lies behind it. */
  readonly neck: string;
  readonly halfWidthMm: number;
  readonly topMm: number;
};

/** Half the breadth between the shoulder points: the group's mean, in proportion to this neck base. */
function halfShoulders(figure: Figure, sex: Sex): number {
  return (meanOf(sex, 'shoulderBreadthMm').mm * figure.neckBase.mm) / meanOf(sex, 'neckBaseGirthMm').mm / 2;
}

/** @param bottomMm how far below the pit the drawing goes */
export function outlineOf(figure: Figure, sex: Sex, bottomMm: number): Outline {
  const neckHalf = (figure.neckGirth.mm / Math.PI / 2) * NECK_BREADTH_SHARE;
  const baseHalf = figure.neckBase.mm / Math.PI / 2;
  const sideY = -figure.napeAbovePit.mm / 2;
  const shoulder = halfShoulders(figure, sex);
  const arm = shoulder * (1 + ARM_SHARE * 2);
  const topMm = sideY - figure.neckGirth.mm * 0.3;
  const shoulderY = sideY + shoulder * 0.2;
  const side = (way: 1 | -1): string => {
    const at = (x: number, y: number): string => pair(way * x, y);
    return (
      `M${at(neckHalf * 1.02, topMm)}` +
      `C${at(neckHalf * 0.97, (topMm + sideY) / 2)} ${at(neckHalf * 0.98, sideY - baseHalf * 0.35)} ${at(baseHalf * 1.04, sideY)}` +
      `C${at(baseHalf * 1.5, sideY + shoulder * 0.09)} ${at(shoulder * 0.8, shoulderY - shoulder * 0.1)} ${at(shoulder, shoulderY)}` +
      `C${at(arm * 0.98, shoulderY + shoulder * 0.08)} ${at(arm, shoulderY + shoulder * 0.35)} ${at(arm * 1.02, shoulderY + shoulder * 0.7)}` +
      `L${at(arm * 1.04, Math.max(bottomMm, shoulderY + shoulder))}`
    );
  };
  const detailOf = (way: 1 | -1): string => {
    const at = (x: number, y: number): string => pair(way * x, y);
    const armpitY = shoulderY + shoulder * 0.72;
    return (
      `M${at(baseHalf * 0.16, 1)}C${at(baseHalf * 0.6, 4)} ${at(shoulder * 0.6, shoulderY * 0.3 + 2)} ${at(shoulder * 0.88, shoulderY + 6)}` +
      `M${at(shoulder * 0.84, armpitY)}C${at(shoulder * 0.82, armpitY + shoulder * 0.25)} ${at(shoulder * 0.8, armpitY + shoulder * 0.5)} ${at(shoulder * 0.8, Math.max(bottomMm, armpitY + 10))}` +
      `M${at(neckHalf * 0.72, sideY - baseHalf * 0.5)}Q${at(neckHalf * 0.45, sideY * 0.3)} ${at(baseHalf * 0.13, -1)}`
    );
  };
  const neck =
    `M${pair(-neckHalf * 1.02, topMm - 100)}L${pair(-neckHalf, sideY - baseHalf * 0.35)}L${pair(-baseHalf * 0.98, sideY)}` +
    `L${pair(0, sideY * 0.4)}L${pair(baseHalf * 0.98, sideY)}L${pair(neckHalf, sideY - baseHalf * 0.35)}L${pair(neckHalf * 1.02, topMm - 100)}Z`;
  return {
    contour: side(-1) + side(1),
    detail: detailOf(-1) + detailOf(1),
    neck,
    halfWidthMm: arm * 1.04,
    topMm,
  };
}
