import { polygon } from '../../svg/text.ts';
import { pathMark, roundedBox, type Shaper, type Surface } from './form.ts';

/** How wide its bevels are, as a share of its face. */
const BEVEL_SHARE = 0.14;

/** A block with bevelled edges, its hole through two faces. */
export const cube: Shaper = ({ alongMm, acrossMm, roundingMm }) => {
  const halfAlong = alongMm / 2;
  const halfAcross = acrossMm / 2;
  const bevel = Math.min(alongMm, acrossMm) * BEVEL_SHARE;
  const corner = Math.min(roundingMm, bevel);
  const faceAlong = halfAlong - bevel;
  const faceAcross = halfAcross - bevel;
  const ends: Surface[] = ([-1, 1] as const).map((side) => ({
    mark: pathMark(
      polygon([
        [side * (halfAlong - corner * 0.3), -halfAcross + corner * 0.3],
        [side * faceAlong, -faceAcross],
        [side * faceAlong, faceAcross],
        [side * (halfAlong - corner * 0.3), halfAcross - corner * 0.3],
      ]),
    ),
    lie: [side * 0.7, 0, 0.7],
  }));
  const outline = roundedBox(alongMm, acrossMm, corner);
  return {
    outline,
    surfaces: [
      { mark: outline, lie: 'turned' },
      ...ends,
      { mark: roundedBox(faceAlong * 2, faceAcross * 2, corner * 0.5), lie: 'plate' },
    ],
    lines: [],
    gloss: 'plate',
  };
};
