/** A drawing's definitions: each gradient, clip and symbol written once, under ids that only this drawing has. */
import { assertIdPrefix } from '../../svg/document.ts';
import { element } from '../../svg/text.ts';
import { writeGradient, type Gradient } from './gradient.ts';
import { writeMarker, type Stance } from './stamp.ts';

export type Ink = {
  /** `url(#…)` of a gradient, for a fill or a stroke. */
  paint(gradient: Gradient): string;
  /** `url(#…)` of a clip in the outline given as markup. */
  clip(outline: string): string;
  /** `#…` of a symbol for `<use>`; `draw` is asked only where `key` is new. */
  symbol(key: string, draw: () => string): string;
  /** `url(#…)` of the same as a marker. */
  marker(key: string, stance: Stance, draw: () => string): string;
  /** Everything asked for so far, to stand in `<defs>`. */
  definitions(): string;
};

/** Throws RangeError on an id prefix that can't start an id. */
export function mixInk(idPrefix: string): Ink {
  assertIdPrefix(idPrefix);
  const ids = new Map<string, string>();
  let definitions = '';
  const define = (key: string, write: (id: string) => string): string => {
    const known = ids.get(key);
    if (known !== undefined) return known;
    const id = `${idPrefix}-${ids.size.toString(36)}`;
    ids.set(key, id);
    // Written first, joined after: a symbol may ask for definitions of its own.
    const written = write(id);
    definitions += written;
    return id;
  };
  const byStops = new Map<string, string>();
  const writeAlike = (gradient: Gradient, id: string): string => {
    const stops = JSON.stringify(gradient.stops);
    const first = byStops.get(stops);
    if (first === undefined) byStops.set(stops, id);
    return writeGradient(gradient, id, first === undefined ? null : `#${first}`);
  };
  return {
    paint: (gradient) => `url(#${define(JSON.stringify(gradient), (id) => writeAlike(gradient, id))})`,
    clip: (outline) => `url(#${define(`clip ${outline}`, (id) => element('clipPath', { id }, outline))})`,
    symbol: (key, draw) => `#${define(`symbol ${key}`, (id) => element('g', { id }, draw()))}`,
    marker: (key, stance, draw) =>
      `url(#${define(`${stance} ${key}`, (id) => writeMarker(id, stance, draw()))})`,
    definitions: () => definitions,
  };
}
