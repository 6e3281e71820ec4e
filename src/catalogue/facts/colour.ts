/** The family that a colour belongs to for someone who looks for "something green". */
import type { Look } from '#core/design/component.ts';

export type ColourFamily =
  | 'white'
  | 'grey'
  | 'black'
  | 'brown'
  | 'red'
  | 'pink'
  | 'orange'
  | 'yellow'
  | 'green'
  | 'blue'
  | 'purple'
  | 'silver'
  | 'gold'
  | 'copper';

/** sRGB to linear light (IEC 61966-2-1). */
function linear(byte: number): number {
  const value = byte / 255;
  return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
}

/**
 * Oklab (Ottosson 2020) of `#rrggbb`: lightness 0 to 1, chroma from 0, hue in
 * degrees from red. In it equal steps look equal, which sRGB's own hue lacks.
 */
export function oklch(colour: string): {
  readonly lightness: number;
  readonly chroma: number;
  readonly hue: number;
} {
  const [r, g, b] = [1, 3, 5].map((at) => linear(parseInt(colour.slice(at, at + 2), 16))) as [
    number,
    number,
    number,
  ];
  const l = Math.cbrt(0.4122214708 * r + 0.5363325363 * g + 0.0514459929 * b);
  const m = Math.cbrt(0.2119034982 * r + 0.6806995451 * g + 0.1073969566 * b);
  const s = Math.cbrt(0.0883024619 * r + 0.2817188376 * g + 0.6299787005 * b);
  const lightness = 0.2104542553 * l + 0.793617785 * m - 0.0040720468 * s;
  const greenRed = 1.9779984951 * l - 2.428592205 * m + 0.4505937099 * s;
  const blueYellow = 0.0259040371 * l + 0.7827717662 * m - 0.808675766 * s;
  const hue = (Math.atan2(blueYellow, greenRed) * 180) / Math.PI;
  return { lightness, chroma: Math.hypot(greenRed, blueYellow), hue: (hue + 360) % 360 };
}

// Below this a bead looks grey, whatever its hue; light colours show a tint sooner.
const leastChroma = 0.028;

function neutral(lightness: number): ColourFamily {
  if (lightness > 0.86) return 'white';
  return lightness < 0.32 ? 'black' : 'grey';
}

/** Warm hues are brown when dark and dull, pink when light. */
function warm(lightness: number, chroma: number, hue: number): ColourFamily {
  if (hue >= 85) return chroma < 0.075 && lightness < 0.75 ? 'brown' : 'yellow';
  if (hue >= 70 && lightness < 0.68 && chroma < 0.1) return 'brown';
  if (hue >= 40) {
    if (lightness < 0.55 || chroma < 0.07) return lightness > 0.8 ? 'white' : 'brown';
    return hue > 74 ? 'yellow' : 'orange';
  }
  if (lightness > 0.72) return 'pink';
  if (chroma < 0.06) return 'brown';
  return hue < 5 && lightness > 0.5 ? 'pink' : 'red';
}

/** The family of `#rrggbb`. Borders are set by eye: nobody has a standard for where brown begins. */
export function colourFamily(colour: string): ColourFamily {
  const { lightness, chroma, hue } = oklch(colour);
  if (lightness < 0.24 || chroma < leastChroma) return neutral(lightness);
  if (lightness > 0.9 && chroma < 0.05) return 'white';
  if (hue >= 110 && hue < 190) return 'green';
  if (hue >= 190 && hue < 285) return 'blue';
  if (hue >= 285 && hue < 345) return 'purple';
  if (hue >= 345) return lightness > 0.55 ? 'pink' : 'red';
  return warm(lightness, chroma, hue);
}

/** Metals are called by what they look like, gold for brass too: people look for a tone, not an alloy. */
function metalFamily(colour: string): ColourFamily {
  const { chroma, hue } = oklch(colour);
  if (chroma < 0.04) return 'silver';
  return hue >= 65 ? 'gold' : 'copper';
}

/** The family of a component's look. */
export function familyOf({ family, colour }: Look): ColourFamily {
  return family === 'metal' ? metalFamily(colour) : colourFamily(colour);
}
