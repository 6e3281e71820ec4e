/** What wire and components of a piece are called in sentences. */
import { wireKey } from '#catalogue/model/catalogue.ts';
import type { ComponentKind } from '#core/design/component.ts';
import type { Design } from '#core/design/design.ts';
import type { NameOf } from '#words/en/steps.ts';

/** A component's or wire's name by its id: the reader's own, else the design's, else the id. */
export function namesIn(design: Design, own: Readonly<Record<string, string>>): NameOf {
  const { wire, components } = design;
  return (id) => (id === wire.id ? (own[wireKey(id)] ?? wire.name) : (own[id] ?? components[id]?.name ?? id));
}

/** Kinds that there is one of in a piece, as sentences call them. */
export type PlainKinds = Readonly<Partial<Record<ComponentKind, string>>>;

/** As `namesIn`, but what closes a piece goes by its kind: within a sentence "the clasp" says enough. */
export function plainNamesIn(design: Design, named: NameOf, kinds: PlainKinds): NameOf {
  return (id) => {
    const kind = design.components[id]?.kind;
    return (kind === undefined ? undefined : kinds[kind]) ?? named(id);
  };
}
