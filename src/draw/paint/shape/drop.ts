import { pair } from '../../svg/text.ts';
import { pathMark, type Shaper } from './form.ts';

/** A drop, drilled from its tip, which lies at the start of the wire. */
export const drop: Shaper = ({ alongMm, acrossMm }) => {
  const half = alongMm / 2;
  const radius = Math.min(acrossMm / 2, half);
  const bellyX = half - radius;
  const neck = radius * 0.16;
  // A circle's quarter as a Bézier: 0.5523 of the radius.
  const round = radius * 0.5523;
  const d =
    `M${pair(-half, -neck)}C${pair(-half * 0.4, -radius * 0.25)} ${pair(bellyX - radius * 0.9, -radius)} ${pair(bellyX, -radius)}` +
    `C${pair(bellyX + round, -radius)} ${pair(half, -round)} ${pair(half, 0)}` +
    `C${pair(half, round)} ${pair(bellyX + round, radius)} ${pair(bellyX, radius)}` +
    `C${pair(bellyX - radius * 0.9, radius)} ${pair(-half * 0.4, radius * 0.25)} ${pair(-half, neck)}Z`;
  const outline = pathMark(d);
  return { outline, surfaces: [{ mark: outline, lie: 'ball' }], lines: [], gloss: 'ball' };
};
