import { roundedBox, type Shaper } from './form.ts';

/** A flattened ball, its hole through the short way; also a ring seen from its edge. */
export const rondelle: Shaper = ({ alongMm, acrossMm, roundingMm }) => {
  const outline = roundedBox(alongMm, acrossMm, Math.min(roundingMm, alongMm / 2, acrossMm / 2));
  return { outline, surfaces: [{ mark: outline, lie: 'ball' }], lines: [], gloss: 'turned' };
};
