/** Beads that are seen through, so that the wires in them show. */
import type { Spot } from '../../layout/spot.ts';
import { element } from '../../svg/text.ts';
import type { Ink } from '../ink/ink.ts';
import { paintSpots } from './strand.ts';

/** How far they are faded; a plate holds them on any ground. */
const FADED = '.5';
const PLATE = '.14';
/** How far the plate reaches beyond them, mm. */
export const PLATE_ROOM_MM = 0.6;

export const paintSeenThrough = (ink: Ink, shown: readonly Spot[]): string =>
  paintPlate(shown) + element('g', { opacity: FADED }, paintSpots(ink, shown));

/** Under the beads that are seen through: without it dark ones would be lost on a dark page. */
function paintPlate(shown: readonly Spot[]): string {
  const [first] = shown;
  const last = shown.at(-1);
  if (first === undefined || last === undefined) return '';
  const fromMm = first.xMm - first.component.alongMm / 2;
  const halfMm = Math.max(...shown.map(({ component }) => component.acrossMm / 2)) + PLATE_ROOM_MM;
  return element('rect', {
    x: fromMm - PLATE_ROOM_MM,
    y: -halfMm,
    width: last.xMm + last.component.alongMm / 2 - fromMm + 2 * PLATE_ROOM_MM,
    height: 2 * halfMm,
    rx: PLATE_ROOM_MM * 2,
    fill: 'currentColor',
    'fill-opacity': PLATE,
  });
}
