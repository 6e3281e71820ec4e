import { polygon } from '../../svg/text.ts';
import { pathMark, type Shaper, type Surface } from './form.ts';

/** Facets that the eye sees of a half: four of the eight that go round it, by the angle of their middle. */
const FACETS_RAD = [-3, -1, 1, 3].map((eighth) => (eighth * Math.PI) / 8);
const HALF_FACET_RAD = Math.PI / 8;

/** How wide the ends are, as a share of the waist. */
const END_SHARE = 0.2;

/** Two cones, base to base, cut in facets. */
export const bicone: Shaper = ({ alongMm, acrossMm }) => {
  const halfAlong = alongMm / 2;
  const waist = acrossMm / 2;
  const end = waist * END_SHARE;
  const tilt = Math.atan2(waist - end, halfAlong);
  const surfaces: Surface[] = [];
  let edges = '';
  for (const side of [-1, 1] as const) {
    for (const around of FACETS_RAD) {
      const low = Math.sin(around - HALF_FACET_RAD);
      const high = Math.sin(around + HALF_FACET_RAD);
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
      edges += polygon(
        [
          [0, waist * high],
          [side * halfAlong, end * high],
        ],
        false,
      );
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
  const girdle = polygon(
    [
      [0, -waist],
      [0, waist],
    ],
    false,
  );
  return {
    outline,
    surfaces,
    lines: [{ d: edges + girdle, tone: 'light', widthMm: acrossMm * 0.022 }],
    gloss: 'none',
  };
};
