import type { Gradient } from './gradient.ts';

/** A spot of a colour: strong at its heart, gone at its rim. */
export function glow(colour: string): Gradient {
  return {
    form: 'radial',
    centre: [0.5, 0.5],
    radius: 0.5,
    focus: [0.5, 0.5],
    stops: [
      { at: 0, colour, opacity: 0.9 },
      { at: 0.5, colour, opacity: 0.4 },
      { at: 1, colour, opacity: 0 },
    ],
  };
}
