import { oval, type Shaper } from './form.ts';

/** A disc drilled edge to edge, so that it lies with its face to the eye. */
export const coin: Shaper = ({ alongMm, acrossMm }) => {
  const outline = oval(alongMm, acrossMm);
  return {
    outline,
    surfaces: [
      { mark: outline, lie: 'ball' },
      { mark: oval(alongMm * 0.8, acrossMm * 0.8), lie: 'plate' },
    ],
    lines: [],
    gloss: 'plate',
  };
};
