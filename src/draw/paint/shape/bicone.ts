import { polygon } from '../../svg/text.ts';
import { pathMark, type Shaper, type Surface } from './form.ts';

/** Facets that the eye sees of a half: three of the six that go round it. */
const FACET_RAD = [-Math.PI / 3, 0, Math.PI / 3] as const;

/** How wide the ends are, as a share of the waist. */
const END_SHARE = 0.2;

/** Two cones, base to base, cut in facets. */
export const bicone: Shaper = ({ alongMm, acrossMm }) => {
  const halfAlong = alongMm / 2;
  const waist = acrossMm / 2;
  const end = waist * END_SHARE;
  const tilt = Math.atan2(waist - end, halfAlong);
  const surfaces: Surface[] = [];
  for (const side of [-1, 1] as const) {
    for (const around of FACET_RAD) {
      const low = Math.sin(around - Math.PI / 6);
      const high = Math.sin(around + Math.PI / 6);
      surfaces.push({
        mark: pathMark(
          polygon([
            [0, waist * low],
            [side * halfAlong, end * low],
            [side * halfAlong, end * high],
            [0, waist * high],
          ]),
        ),
        lie: [side * Math.sin(tilt), Math.cos(tilt) * Math.sin(around), Math.cos(tilt) * Math.cos(around)],
      });
    }
  }
  const outline = pathMark(
    polygon([
      [-halfAlong, -end],
      [0, -waist],
      [halfAlong, -end],
      [halfAlong, end],
      [0, waist],
      [-halfAlong, end],
    ]),
  );
  return { outline, surfaces, lines: [], gloss: 'none' };
};
