/** Light on a surface: which gradient or flat colour it takes. */
import type { Look } from '#core/components/component.ts';
import type { Gradient, Stop } from './gradient.ts';
import { brightness, type Light } from './light.ts';
import type { Material } from './material/material.ts';
import type { Lie } from './shape/form.ts';

/** Where along the radius of a ball its shade is sampled; closer at the rim, where it changes fastest. */
const BALL_SAMPLES = [0, 0.3, 0.55, 0.75, 0.9, 1] as const;

/** How far (rad) from the hot spot the far rim of a ball is seen. */
const BALL_REACH_RAD = 1.95;

/** Light thrown back from the ground on the far rim, 0 to 1. */
const BOUNCE = 0.1;

/** Where across a turned surface its shade is sampled, −1 the one edge, 1 the other. */
const TURNED_SAMPLES = [-1, -0.75, -0.4, 0, 0.4, 0.75, 1] as const;

/** The paint of a surface that lies so, in this look and light: a gradient or one flat colour. */
export function layLight(look: Look, material: Material, lie: Lie, light: Light): Gradient | string {
  if (lie === 'ball') return ballGradient(look, material, light);
  if (lie === 'turned') return turnedGradient(look, material, light);
  if (lie === 'plate') return plateGradient(look, material, light);
  const [nx, ny, nz] = lie;
  return material.shade(look, brightness(through(light, material), nx, ny, nz));
}

/** Clear materials are brightest where the light comes out. */
function through(light: Light, material: Material): Light {
  return { x: light.x * material.lit, y: light.y * material.lit };
}

function ballGradient(look: Look, material: Material, light: Light): Gradient {
  const seen = through(light, material);
  const stops: Stop[] = BALL_SAMPLES.map((at) => {
    const bright = 0.5 + 0.5 * Math.cos(at * BALL_REACH_RAD);
    const bounced = at === 1 ? bright + BOUNCE : bright;
    return { at, colour: material.shade(look, bounced) };
  });
  return {
    form: 'radial',
    centre: [0.5 + 0.06 * seen.x, 0.5 + 0.06 * seen.y],
    radius: 0.58,
    focus: [0.5 + 0.22 * seen.x, 0.5 + 0.22 * seen.y],
    stops,
  };
}

function turnedGradient(look: Look, material: Material, light: Light): Gradient {
  const seen = through(light, material);
  const stops = TURNED_SAMPLES.map((across) => ({
    at: (across + 1) / 2,
    colour: material.shade(look, brightness(seen, 0, across, Math.sqrt(1 - across * across))),
  }));
  return { form: 'linear', from: [0, 0], to: [0, 1], stops };
}

function plateGradient(look: Look, material: Material, light: Light): Gradient {
  const seen = through(light, material);
  return {
    form: 'linear',
    from: [0.5 + 0.5 * seen.x, 0.5 + 0.5 * seen.y],
    to: [0.5 - 0.5 * seen.x, 0.5 - 0.5 * seen.y],
    stops: [
      { at: 0, colour: material.shade(look, 0.92) },
      { at: 0.5, colour: material.shade(look, 0.7) },
      { at: 1, colour: material.shade(look, 0.55) },
    ],
  };
}

/** The mirror image of the lamp: white at its heart, gone at its rim. */
export const GLOSS: Gradient = {
  form: 'radial',
  centre: [0.5, 0.5],
  radius: 0.5,
  focus: [0.5, 0.5],
  stops: [
    { at: 0, colour: '#fff' },
    { at: 0.35, colour: '#fff', opacity: 0.7 },
    { at: 1, colour: '#fff', opacity: 0 },
  ],
};
