import { oval, type Shaper } from './form.ts';

/** Round, or an ellipsoid where its two measures differ. */
export const ball: Shaper = ({ alongMm, acrossMm }) => {
  const outline = oval(alongMm, acrossMm);
  return { outline, surfaces: [{ mark: outline, lie: 'ball' }], lines: [], gloss: 'ball' };
};
