/**
 * One drawing at many places: an SVG marker, and a path with a vertex wherever it is to stand.
 * A browser lays out a marker once, however often it paints it. A `<use>` copies the drawing's every
 * element instead, which for a long strand takes a phone half a second.
 */
import { element, pair } from '../../svg/text.ts';

export type Place = { readonly xMm: number; readonly yMm: number; readonly turnRad: number };

/** How far the path runs straight on either side of a vertex, mm: far enough that rounding doesn't turn it. */
const HANDLE_MM = 3;

/** Markers that turn with the path, and ones that stand upright whatever the path does. */
export type Stance = 'turning' | 'upright';

/** Upright where every place is: its path needs a third of the words. */
export function stanceOf(places: readonly Place[]): Stance {
  return places.every(({ turnRad }) => turnRad === 0) ? 'upright' : 'turning';
}

/** The marker's element. It is sized by the path's stroke width, which is 1 where nobody sets it. */
export function writeMarker(id: string, stance: Stance, drawing: string): string {
  const orient = stance === 'turning' ? 'auto' : undefined;
  return element('marker', { id, overflow: 'visible', orient }, drawing);
}

/**
 * The marker at every place. Only inner vertices carry it, so the path has one more at either end.
 * @param marker `url(#…)`
 */
export function stampAt(marker: string, places: readonly Place[], stance: Stance): string {
  const d = stance === 'upright' ? uprightPath(places) : turningPath(places);
  return element('path', { 'marker-mid': marker, fill: 'none', d });
}

/**
 * Path data by steps from place to place, which are shorter than places. They are the differences of
 * rounded places, so that rounding doesn't add up along a strand.
 */
type Pen = {
  /** The step to a place, and the pen with it. */
  readonly to: (xMm: number, yMm: number) => string;
  /** The step to a place that the pen doesn't go to. */
  readonly towards: (xMm: number, yMm: number) => string;
};

/** Steps to the millimetre: num writes as many. */
const FINENESS = 100;

function penAt(xMm: number, yMm: number): Pen {
  const rounded = (mm: number): number => Math.round(mm * FINENESS);
  let x = rounded(xMm);
  let y = rounded(yMm);
  const towards = (toX: number, toY: number): string =>
    pair((rounded(toX) - x) / FINENESS, (rounded(toY) - y) / FINENESS);
  return {
    towards,
    to: (toX, toY) => {
      const step = towards(toX, toY);
      x = rounded(toX);
      y = rounded(toY);
      return step;
    },
  };
}

function uprightPath(places: readonly Place[]): string {
  const pen = penAt(0, 0);
  const steps = places.map(({ xMm, yMm }) => pen.to(xMm, yMm));
  return `M0 0l${joined(steps)}h1`;
}

/** Smooth curves leave a vertex as they came in, so each takes one handle and its vertex. */
function turningPath(places: readonly Place[]): string {
  const handles = places.map(({ xMm, yMm, turnRad }) => ({
    stepX: HANDLE_MM * Math.cos(turnRad),
    stepY: HANDLE_MM * Math.sin(turnRad),
    xMm,
    yMm,
  }));
  const first = handles[0];
  const last = handles.at(-1);
  if (first === undefined || last === undefined) return '';
  const start = [first.xMm - first.stepX, first.yMm - first.stepY] as const;
  const pen = penAt(...start);
  const steps = handles.flatMap(({ xMm, yMm, stepX, stepY }) => [
    pen.towards(xMm - stepX, yMm - stepY),
    pen.to(xMm, yMm),
  ]);
  return `M${pair(...start)}s${joined(steps)}l${pair(last.stepX, last.stepY)}`;
}

/** Pairs one after the other, with the space left out where a sign parts them. */
function joined(pairs: readonly string[]): string {
  return pairs.map((one, at) => (at === 0 || one.startsWith('-') ? one : ` ${one}`)).join('');
}
