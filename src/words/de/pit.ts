/** Höhen, von der Halsgrube aus gesagt; `dropMm` zählt abwärts. */
import { readsAsNone, type Format } from '../format.ts';

const side = (dropMm: number): string => (dropMm < 0 ? 'über' : 'unter');

export const fromPit = (f: Format, dropMm: number): string =>
  readsAsNone(f, dropMm)
    ? 'auf Höhe der Halsgrube'
    : `${f.length(Math.abs(dropMm))} ${side(dropMm)} der Halsgrube`;

const fromIt = (f: Format, dropMm: number): string =>
  readsAsNone(f, dropMm) ? 'ihrer Höhe' : `${f.length(Math.abs(dropMm))} ${side(dropMm)} ihr`;

export const pitBand = (f: Format, leastMm: number, mostMm: number): string =>
  `bei neun von zehn Menschen zwischen ${fromIt(f, leastMm)} und ${fromIt(f, mostMm)}`;
