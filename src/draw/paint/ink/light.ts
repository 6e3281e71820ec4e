/** Where the light comes from: one lamp, up and to the left, the same in every drawing. */

/** A direction in a component's own frame: x along its hole, y square to it, both −1 to 1. */
export type Light = { readonly x: number; readonly y: number };

/** Towards the lamp, on the page. */
const LAMP_RAD = (-120 * Math.PI) / 180;

/** Steps a half turn is cut into: every step is one more symbol, and 30° is about what the eye lets pass. */
const STEPS = 6;

/** On a tumbled chip, whose own outline is chance, and on a seed bead's one glint, 60° passes too. */
const COARSE_STEPS = 3;

/** The light as a component turned by `turnRad` sees it, in one of a few steps so that symbols can be shared. */
export function lightOn(turnRad: number, coarse = false): Light {
  const steps = coarse ? COARSE_STEPS : STEPS;
  const step = Math.round((turnRad / Math.PI) * steps);
  const seenRad = LAMP_RAD - (step * Math.PI) / steps;
  return { x: Math.cos(seenRad), y: Math.sin(seenRad) };
}

/** Half turns look alike on a component that is alike at both ends: −π/2 to π/2 for any turn. */
export function halfTurn(turnRad: number): number {
  const turn = turnRad - Math.PI * Math.round(turnRad / Math.PI);
  return turn;
}

/**
 * How bright a surface is, 0 to 1, by its outward normal in the component's frame (z towards the eye):
 * Lambert's law with a wrap, so that the far side isn't black.
 */
export function brightness(light: Light, nx: number, ny: number, nz: number): number {
  const towards = LAMP_SIDE * (light.x * nx + light.y * ny) + LAMP_FRONT * nz;
  return Math.min(1, Math.max(0, (towards + WRAP) / (1 + WRAP)));
}

/** The lamp stands as far to the side as to the front, near enough: unit length together. */
const LAMP_SIDE = 0.66;
const LAMP_FRONT = 0.751;
const WRAP = 0.35;
