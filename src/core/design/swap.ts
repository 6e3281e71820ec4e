/** A design with another closing or another pendant, as a buyer may choose it. */
import type { Component, Shape } from './component.ts';
import type { Design, Ends, Hanging } from './design.ts';

/** Components by id, those of the design and those that come with the swap. */
function joined(design: Design, more: readonly Component[]): Design['components'] {
  return { ...design.components, ...Object.fromEntries(more.map((component) => [component.id, component])) };
}

/** Clasps of two halves, the second of which stands at the far end instead of a ring. */
const OF_TWO_HALVES: readonly Shape[] = ['toggle', 'hook', 'box', 'magnetic'];

/** Whether a clasp closes on its own second half, and needs no ring. */
export const closesOnItself = ({ shape }: Component): boolean => OF_TWO_HALVES.includes(shape);

/**
 * The design closed in another way.
 * @param ends what changes of the ends; the rest stays.
 * @param more the components that `ends` names and the design doesn't know.
 */
export function withEnds(design: Design, ends: Partial<Ends>, more: readonly Component[] = []): Design {
  return { ...design, ends: { ...design.ends, ...ends }, components: joined(design, more) };
}

/**
 * The design with another pendant on its rings, or none.
 * @param more the components that `hanging` names and the design doesn't know.
 */
export function withHanging(
  design: Design,
  hanging: Hanging | null,
  more: readonly Component[] = [],
): Design {
  return { ...design, hanging, components: joined(design, more) };
}

/** Parts in place of a design's own; null for each that stays. */
export type Swap = {
  readonly clasp: Component | null;
  readonly ring: Component | null;
  readonly pendant: Component | null;
};

/** The ring that stands opposite a clasp; undefined where one has to be named. */
function ringFor({ ends }: Design, { clasp, ring }: Swap): string | null | undefined {
  if (ring !== null) return ring.id;
  if (clasp === null) return ends.ring;
  // An extender's chain is caught by its ring, whatever the clasp.
  if (closesOnItself(clasp)) return ends.extenderMm > 0 ? ends.ring : null;
  return ends.ring ?? undefined;
}

/** The design with other parts; null where the clasp needs a ring and none is named. A pendant hangs from the rings of the one before it. */
export function withParts(design: Design, swap: Swap): Design | null {
  const { clasp, ring, pendant } = swap;
  const opposite = ringFor(design, swap);
  if (opposite === undefined) return null;
  const more = [clasp, ring].filter((one) => one !== null);
  const closed = withEnds(design, { clasp: clasp?.id ?? design.ends.clasp, ring: opposite }, more);
  if (pendant === null) return closed;
  return withHanging(closed, { pendant: pendant.id, rings: design.hanging?.rings ?? [] }, [pendant]);
}
