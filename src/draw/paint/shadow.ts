/** Shadows on the ground that a piece lies on: soft, down and to the right, away from the lamp. */
import type { Spot } from '../layout/spot.ts';
import { element, num } from '../svg/text.ts';
import type { Gradient } from './ink/gradient.ts';
import type { Ink } from './ink/ink.ts';
import type { Place } from './ink/stamp.ts';
import { stampAll, type Drawn } from './ink/stampAll.ts';

/** Dark where the bead rests, gone a little outside it. A blur filter would look the same and cost a phone far more. */
const SHADOW: Gradient = {
  form: 'radial',
  centre: [0.5, 0.5],
  radius: 0.5,
  focus: [0.5, 0.5],
  stops: [
    { at: 0, colour: '#1d1712', opacity: 0.5 },
    { at: 0.55, colour: '#1d1712', opacity: 0.3 },
    { at: 1, colour: '#1d1712', opacity: 0 },
  ],
};

/** How far the shadow falls, and how much wider than the bead it spreads, as shares of its diameter. */
const FALL_X = 0.2;
const FALL_Y = 0.3;
const SPREAD = 1.36;

/** A shadow is too soft to show which way a bead this near to round is turned. */
const NEARLY_ROUND = 1.35;

export function paintShadows(ink: Ink, spots: readonly Spot[]): string {
  return stampAll(ink, spots.map(shadowOf));
}

function shadowOf({ component, xMm, yMm, turnRad }: Spot): readonly [Drawn, Place] {
  const { alongMm, acrossMm } = component;
  const isRound = alongMm < acrossMm * NEARLY_ROUND && acrossMm < alongMm * NEARLY_ROUND;
  const shape = isRound ? round((alongMm + acrossMm) / 4) : oval(alongMm / 2, acrossMm / 2);
  const place = {
    xMm: xMm + acrossMm * FALL_X,
    yMm: yMm + acrossMm * FALL_Y,
    turnRad: isRound ? 0 : turnRad,
  };
  return [
    { key: `shadow ${shape}`, paint: (ink) => element('g', { fill: ink.paint(SHADOW) }, shape) },
    place,
  ];
}

const round = (radiusMm: number): string => element('circle', { r: num(radiusMm * SPREAD, 1) });

const oval = (alongMm: number, acrossMm: number): string =>
  element('ellipse', { rx: num(alongMm * SPREAD, 1), ry: num(acrossMm * SPREAD, 1) });
