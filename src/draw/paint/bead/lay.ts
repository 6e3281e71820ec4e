/** Light on a surface: which gradient or flat colour it takes. */
import type { Look } from '#core/design/component.ts';
import type { Gradient, Stop } from '../ink/gradient.ts';
import { brightness, type Light } from '../ink/light.ts';
import type { Material, Tint } from '../material/material.ts';
import type { Lie } from '../shape/form.ts';

/** Where along the radius of a ball its shade is sampled; closer at the rim, where it changes fastest. */
const BALL_SAMPLES = [0, 0.25, 0.5, 0.7, 0.84, 0.94, 1] as const;

/** How far (rad) from the hot spot the far rim of a ball is seen. */
const BALL_REACH_RAD = 2.15;

/** How far from the middle the hot spot of a ball lies, in shares of its width. */
const HOT_SPOT_SHARE = 0.2;

/** Where across a turned surface its shade is sampled, −1 the one edge, 1 the other. */
const TURNED_SAMPLES = [-1, -0.85, -0.6, -0.3, 0, 0.3, 0.6, 0.85, 1] as const;

/** The paint of a surface that lies so, in this look and light. */
export function layLight(look: Look, material: Material, lie: Lie, light: Light): Gradient | Tint {
  const seen = { x: light.x * material.lit, y: light.y * material.lit };
  const shade = (bright: number): Tint => material.shade(look, Math.min(1, Math.max(0, bright)));
  if (lie === 'ball') return ballGradient(shade, material.bounce, seen);
  if (lie === 'turned') return turnedGradient(shade, seen);
  if (lie === 'plate') return plateGradient(shade, seen);
  const [nx, ny, nz] = lie;
  return shade(brightness(seen, nx, ny, nz));
}

type Shade = (bright: number) => Tint;

function ballGradient(shade: Shade, bounce: number, seen: Light): Gradient {
  const stops: Stop[] = BALL_SAMPLES.map((at) => {
    const bright = 0.5 + 0.5 * Math.cos(at * BALL_REACH_RAD);
    return { at, ...shade(at === 1 ? bright + bounce : bright) };
  });
  return {
    form: 'radial',
    centre: [0.5 + 0.05 * seen.x, 0.5 + 0.05 * seen.y],
    radius: 0.56,
    focus: [0.5 + HOT_SPOT_SHARE * seen.x, 0.5 + HOT_SPOT_SHARE * seen.y],
    stops,
  };
}

function turnedGradient(shade: Shade, seen: Light): Gradient {
  const stops = TURNED_SAMPLES.map((across) => ({
    at: (across + 1) / 2,
    ...shade(brightness(seen, 0, across, Math.sqrt(1 - across * across))),
  }));
  return { form: 'linear', from: [0, 0], to: [0, 1], stops };
}

function plateGradient(shade: Shade, seen: Light): Gradient {
  return {
    form: 'linear',
    from: [0.5 + 0.5 * seen.x, 0.5 + 0.5 * seen.y],
    to: [0.5 - 0.5 * seen.x, 0.5 - 0.5 * seen.y],
    stops: [
      { at: 0, ...shade(0.9) },
      { at: 0.5, ...shade(0.72) },
      { at: 1, ...shade(0.52) },
    ],
  };
}
