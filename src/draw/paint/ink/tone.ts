/**
 * Colours made lighter, darker, richer or mixed as the eye judges it: in OKLab
 * (Björn Ottosson, "A perceptual color space for image processing", 2020).
 */

/** Lightness 0 to 1, and the two colour axes. */
type Lab = readonly [number, number, number];

const HEX = /^#([0-9a-f]{1,2})([0-9a-f]{1,2})([0-9a-f]{1,2})$/i;

/** What stands in for a colour that isn't `#rrggbb`, so that a slip in the catalogue draws grey and not nothing. */
const FALLBACK: readonly [number, number, number] = [128, 128, 128];

function toLinear(part: number): number {
  const share = part / 255;
  return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
}

function toByte(linear: number): number {
  const held = Math.min(1, Math.max(0, linear));
  const share = held <= 0.0031308 ? held * 12.92 : 1.055 * held ** (1 / 2.4) - 0.055;
  return Math.round(share * 255);
}

function toLab(colour: string): Lab {
  const found = HEX.exec(colour);
  const bytes = found
    ? found.slice(1).map((part) => Number.parseInt(part.length === 1 ? part + part : part, 16))
    : FALLBACK;
  const [r = 0, g = 0, b = 0] = bytes.map(toLinear);
  const l = Math.cbrt(0.4122214708 * r + 0.5363325363 * g + 0.0514459929 * b);
  const m = Math.cbrt(0.2119034982 * r + 0.6806995451 * g + 0.1073969566 * b);
  const s = Math.cbrt(0.0883024619 * r + 0.2817188376 * g + 0.6299787005 * b);
  return [
    0.2104542553 * l + 0.793617785 * m - 0.0040720468 * s,
    1.9779984951 * l - 2.428592205 * m + 0.4505937099 * s,
    0.0259040371 * l + 0.7827717662 * m - 0.808675766 * s,
  ];
}

function toHex([lightness, a, b]: Lab): string {
  const l = (lightness + 0.3963377774 * a + 0.2158037573 * b) ** 3;
  const m = (lightness - 0.1055613458 * a - 0.0638541728 * b) ** 3;
  const s = (lightness - 0.0894841775 * a - 1.291485548 * b) ** 3;
  const bytes = [
    toByte(4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s),
    toByte(-1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s),
    toByte(-0.0041960863 * l - 0.7034186147 * m + 1.707614701 * s),
  ];
  const hex = bytes.map((byte) => byte.toString(16).padStart(2, '0')).join('');
  const short = /^(.)\1(.)\2(.)\3$/.exec(hex);
  return short ? `#${short[1]}${short[2]}${short[3]}` : `#${hex}`;
}

/** A piece has a few colours and asks for their shades a thousand times over. */
const labs = new Map<string, Lab>();
/** More colours than a catalogue has; beyond, the store starts anew rather than grow. */
const mostKept = 4096;

function labOf(colour: string): Lab {
  const known = labs.get(colour);
  if (known !== undefined) return known;
  if (labs.size >= mostKept) labs.clear();
  const lab = toLab(colour);
  labs.set(colour, lab);
  return lab;
}

/** Lightness as the eye judges it, 0 black to 1 white. */
export function lightnessOf(colour: string): number {
  return labOf(colour)[0];
}

/** `colour` with `add` to its lightness (−1 to 1) and its richness multiplied by `chroma`. */
export function tone(colour: string, add: number, chroma = 1): string {
  const [lightness, a, b] = labOf(colour);
  return toHex([Math.min(1, Math.max(0, lightness + add)), a * chroma, b * chroma]);
}

/** `share` 0 gives `from`, 1 gives `to`. */
export function mix(from: string, to: string, share: number): string {
  const first = labOf(from);
  const second = labOf(to);
  return toHex([
    first[0] + (second[0] - first[0]) * share,
    first[1] + (second[1] - first[1]) * share,
    first[2] + (second[2] - first[2]) * share,
  ]);
}
