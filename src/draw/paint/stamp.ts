/**
 * One drawing at many places: an SVG marker, and a path with a vertex wherever it is to stand.
 * A browser lays out a marker once, however often it paints it. A `<use>` copies the drawing's every
 * element instead, which for a long strand takes a phone half a second.
 */
import { element, num, pair } from '../svg/text.ts';

export type Place = { readonly xMm: number; readonly yMm: number; readonly turnRad: number };

/** How far the path runs straight on either side of a vertex, mm: far enough that rounding doesn't turn it. */
const HANDLE_MM = 3;

/** Markers that turn with the path, and ones that stand upright whatever the path does. */
export type Stance = 'turning' | 'upright';

/** Upright where every place is: its path needs a third of the words. */
export function stanceOf(places: readonly Place[]): Stance {
  return places.every(({ turnRad }) => turnRad === 0) ? 'upright' : 'turning';
}

/** The marker's element. */
export function writeMarker(id: string, stance: Stance, drawing: string): string {
  const orient = stance === 'turning' ? 'auto' : undefined;
  return element('marker', { id, markerUnits: 'userSpaceOnUse', overflow: 'visible', orient }, drawing);
}

/**
 * The marker at every place. Only inner vertices carry it, so the path has one more at either end.
 * @param marker `url(#…)`
 */
export function stampAt(marker: string, places: readonly Place[], stance: Stance): string {
  const d = stance === 'upright' ? uprightPath(places) : turningPath(places);
  return element('path', { 'marker-mid': marker, fill: 'none', d });
}

function uprightPath(places: readonly Place[]): string {
  let d = 'M0 0';
  let lastY = '0';
  for (const { xMm, yMm } of places) {
    d += num(yMm) === lastY ? `H${num(xMm)}` : `L${pair(xMm, yMm)}`;
    lastY = num(yMm);
  }
  return `${d}h1`;
}

/** Smooth curves leave a vertex as they came in, so each takes one handle and its vertex. */
function turningPath(places: readonly Place[]): string {
  let d = '';
  let end = '';
  for (const { xMm, yMm, turnRad } of places) {
    const stepX = HANDLE_MM * Math.cos(turnRad);
    const stepY = HANDLE_MM * Math.sin(turnRad);
    const handle = pair(xMm - stepX, yMm - stepY);
    if (d === '') d = `M${handle}`;
    d += `S${handle} ${pair(xMm, yMm)}`;
    end = `l${pair(stepX, stepY)}`;
  }
  return d + end;
}
