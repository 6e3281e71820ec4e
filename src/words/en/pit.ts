/** Heights told from the pit of the neck. `dropMm` counts downwards; what reads as no length is level with it. */
import { readsAsNone, type Format } from '../format.ts';

function from(f: Format, dropMm: number): string {
  if (readsAsNone(f, dropMm)) return 'level with';
  return `${f.length(Math.abs(dropMm))} ${dropMm < 0 ? 'above' : 'below'}`;
}

export const fromPit = (f: Format, dropMm: number): string => `${from(f, dropMm)} the pit of the neck`;

/** Where nine in ten people would find it, after a sentence that has named the pit. */
export const pitBand = (f: Format, leastMm: number, mostMm: number): string =>
  `for nine people in ten between ${from(f, leastMm)} and ${from(f, mostMm)} it`;
