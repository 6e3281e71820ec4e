/** The maker's copy of a piece as one order asks for it: with the clasp or pendant chosen instead. */
import { INSTEAD_PARTS, type InsteadPart } from '#core/design/choice.ts';
import { designWith } from '#core/design/alternatives.ts';
import { AS_LISTED, type OrderDocument } from '#order/document.ts';
import type { Difference } from '#words/difference.ts';
import type { Snapshot } from '../book/snapshot.ts';

/** A copy in which other parts stand. `listed`: what its listed price is for. */
const made = new WeakMap<Snapshot, Map<string, Snapshot | null>>();

/** The copy with the parts that were chosen, itself where none were; null where the maker doesn't offer one of them. */
export function orderedCopy(
  copy: Snapshot,
  { instead, made: asked }: Pick<OrderDocument, 'instead' | 'made'>,
): Snapshot | null {
  const chosen = { clasp: instead.clasp.id, pendant: instead.pendant.id };
  if (chosen.clasp === '' && chosen.pendant === '') return copy;
  // What lies finished is closed already.
  if (asked === 'ready') return null;
  const key = `${chosen.clasp} ${chosen.pendant}`;
  const known = made.get(copy) ?? new Map<string, Snapshot | null>();
  made.set(copy, known);
  const found = known.get(key);
  if (found !== undefined) return found;
  const design = designWith(copy.design, copy.alternatives ?? { clasps: [], pendants: [] }, chosen);
  const ordered = design === null ? null : { ...copy, design, listed: copy.design };
  // Only what is offered is kept: names from outside are without number.
  if (ordered !== null) known.set(key, ordered);
  return ordered;
}

/** Parts chosen that the maker's own list doesn't have. */
export function partsNotOffered(
  copy: Snapshot,
  { instead, made: asked }: Pick<OrderDocument, 'instead' | 'made'>,
): InsteadPart[] {
  return INSTEAD_PARTS.filter((part) => {
    const alone = { ...AS_LISTED, [part]: instead[part] };
    return orderedCopy(copy, { made: asked, instead: alone }) === null;
  });
}

/** The same as differences; told by the name that the buyer read. */
export function notOffered(copy: Snapshot, document: OrderDocument): Difference[] {
  return partsNotOffered(copy, document).map((part) => {
    const { id, name } = document.instead[part];
    return { code: 'not-offered', part, name: name === '' ? id : name };
  });
}
