/**
 * Restringing: beads, clasp and ring are used again; wire, crimps, their covers
 * and guards are new (common practice, no source: a crimp once closed doesn't
 * close again).
 */
import type { Design } from '#core/design/design.ts';
import { usualCounts } from '#core/design/usualCounts.ts';
import { rulePrice } from '#core/sizing/price/price.ts';
import type { OrderDocument } from '#order/document.ts';
import { HAND_WAYS, RESTRING, type OrderWay } from '#words/benchCodes.ts';
import type { Snapshot } from '../book/snapshot.ts';

/** True for an order to restring a piece. What a buyer sends in says nothing: her price would be hers to choose. */
export function isRestring({ choices }: OrderDocument, way: OrderWay): boolean {
  return choices.work === RESTRING.work && HAND_WAYS.some((one) => one === way);
}

/** Ids of what is new on a piece that is restrung. */
export function newParts({ ends }: Design): ReadonlySet<string> {
  return new Set([ends.crimp, ends.cover, ends.guard].filter((id) => id !== null));
}

/** The piece as restringing it is reckoned: what is used again costs nothing and is there, and the price is the rule's alone. */
export function asRestrung(copy: Snapshot): Snapshot {
  const fresh = newParts(copy.design);
  const components = Object.fromEntries(
    Object.entries(copy.design.components).map(([id, component]) => [
      id,
      fresh.has(id) ? component : { ...component, costMinor: 0, stock: null },
    ]),
  );
  const design = { ...copy.design, components };
  const { listed: _listed, ...rest } = copy;
  return { ...rest, design, listedMinor: rulePrice(design, usualCounts(design), copy.rules) };
}
