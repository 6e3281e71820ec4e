/** What may be tried instead of what, all through a piece: one component, the wire, or a metal with all its findings. */
import type { Component, ComponentKind } from '#core/design/component.ts';
import type { Design } from '#core/design/design.ts';
import type { Action, Trays } from './action.ts';
import { namedIn } from './settle.ts';

const WIRE = 'wire';
const METAL = 'metal/';

/** Beads, spacers and caps stand for each other; anything else for its own kind. */
const LIKE_BEADS: readonly ComponentKind[] = ['bead', 'spacer', 'cap'];

const standsFor = (one: Component, other: Component): boolean =>
  one.kind === other.kind || (LIKE_BEADS.includes(one.kind) && LIKE_BEADS.includes(other.kind));

/** How far apart two components of a kind are in shape, the less the liker. */
function apart(one: Component, other: Component): number {
  const shape = one.shape === other.shape ? 0 : 4;
  return shape + Math.abs(one.alongMm - other.alongMm) + Math.abs(one.acrossMm - other.acrossMm);
}

function inMetal(design: Design, { components }: Trays, from: string, to: string): [string, string][] {
  const all = Object.values(components).filter(({ material }) => material === to);
  return namedIn(design).flatMap((id): [string, string][] => {
    const own = components[id];
    if (own?.material !== from) return [];
    const [liked] = all
      .filter(({ kind, ways }) => kind === own.kind && ways === own.ways)
      .sort((one, other) => apart(one, own) - apart(other, own));
    return liked === undefined ? [] : [[id, liked.id]];
  });
}

export type SwapChoices = {
  /** Ids, `wire`, and `metal/` with a material. */
  readonly used: readonly string[];
  readonly instead: (used: string) => readonly string[];
};

export function swapChoices(design: Design, trays: Trays): SwapChoices {
  const named = namedIn(design).filter((id) => trays.components[id] !== undefined);
  const part = (id: string): Component => trays.components[id]!;
  const isMetal = ({ look }: Component): boolean => look.family === 'metal';
  const metals = [
    ...new Set(
      named
        .map(part)
        .filter(isMetal)
        .map(({ material }) => material),
    ),
  ];
  const allMetals = [
    ...new Set(
      Object.values(trays.components)
        .filter(isMetal)
        .map(({ material }) => material),
    ),
  ];
  return {
    used: [WIRE, ...metals.map((metal) => METAL + metal), ...named],
    instead: (used) => {
      if (used === WIRE) return Object.keys(trays.wires).filter((id) => id !== design.wire.id);
      if (used.startsWith(METAL)) {
        const from = used.slice(METAL.length);
        return allMetals.filter((to) => to !== from && inMetal(design, trays, from, to).length > 0);
      }
      const own = part(used);
      return Object.values(trays.components)
        .filter((other) => other.id !== used && standsFor(own, other))
        .sort((one, other) => apart(one, own) - apart(other, own))
        .map(({ id }) => id);
    },
  };
}

/** The step that swaps; empty where nothing is found to swap by. */
export function swapStep(design: Design, trays: Trays, used: string, by: string): readonly Action[] {
  if (used === WIRE) return [{ type: 'wire', wire: by }];
  if (used === design.ends.clasp) return [{ type: 'ends', change: { clasp: by } }];
  const pairs: (readonly [string, string])[] = used.startsWith(METAL)
    ? inMetal(design, trays, used.slice(METAL.length), by)
    : [[used, by]];
  return pairs.map(([from, to]) => ({ type: 'exchange', from, to }));
}
