/** Many drawings at many places, each drawing's places together. */
import type { Ink } from './ink.ts';
import { stampAt, stanceOf, type Place } from './stamp.ts';

/** A drawing round the origin; those of a key are alike. */
export type Drawn = { readonly key: string; readonly paint: (ink: Ink) => string };

/** Draws each key once and stamps it wherever it stands, in the order in which keys first come. */
export function stampAll(ink: Ink, all: readonly (readonly [Drawn, Place])[]): string {
  const placesOf = new Map<string, { readonly drawn: Drawn; readonly places: Place[] }>();
  for (const [drawn, place] of all) {
    const known = placesOf.get(drawn.key);
    if (known === undefined) placesOf.set(drawn.key, { drawn, places: [place] });
    else known.places.push(place);
  }
  return [...placesOf.values()]
    .map(({ drawn, places }) => {
      const stance = stanceOf(places);
      return stampAt(
        ink.marker(drawn.key, stance, () => drawn.paint(ink)),
        places,
        stance,
      );
    })
    .join('');
}
