/** What the maker calls the components of a design. */
import type { Design } from '#core/design/design.ts';

/** Name of a component or of the wire by its id; the id itself where there is none. */
export const nameOf =
  (design: Design) =>
  (id: string): string =>
    design.components[id]?.name ?? (id === design.wire.id ? design.wire.name : id);
