/** Shadows on the ground that a piece lies on: soft, down and to the right, away from the lamp. */
import type { Spot } from '../place/spot.ts';
import { element, num } from '../svg/text.ts';
import type { Gradient } from './gradient.ts';
import type { Ink } from './ink.ts';

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
  const fill = ink.paint(SHADOW);
  const shadows = spots.map(({ component, xMm, yMm, turnRad }) => {
    const { alongMm, acrossMm } = component;
    const cx = xMm + acrossMm * FALL_X;
    const cy = yMm + acrossMm * FALL_Y;
    if (alongMm < acrossMm * NEARLY_ROUND && acrossMm < alongMm * NEARLY_ROUND) {
      return element('circle', {
        cx: num(cx, 1),
        cy: num(cy, 1),
        r: num(((alongMm + acrossMm) / 4) * SPREAD, 1),
      });
    }
    const degrees = num((turnRad * 180) / Math.PI, 0);
    return element('ellipse', {
      rx: num((alongMm / 2) * SPREAD, 1),
      ry: num((acrossMm / 2) * SPREAD, 1),
      transform: `translate(${num(cx, 1)} ${num(cy, 1)})rotate(${degrees})`,
    });
  });
  return element('g', { fill }, shadows.join(''));
}
