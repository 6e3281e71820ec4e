/** What stringing an order takes: components by the piece, wire by the cut. */
import { wireKey } from '#catalogue/model/catalogue.ts';
import type { Cut } from '#core/design/ends/cut.ts';
import { tally } from '#core/design/tally.ts';
import { stringing } from '#core/instructions/stringing.ts';
import type { Candidate } from '#core/sizing/sizing.ts';
import type { Entry } from '../book/entry.ts';
import type { Takes } from '../book/orderStock.ts';
import type { Snapshot } from '../book/snapshot.ts';
import { isRestring, newParts } from '../check/restring.ts';

/** An order with what would be strung for it. */
export type Work = {
  readonly entry: Entry;
  /** The piece as ordered. */
  readonly copy: Snapshot;
  readonly candidate: Candidate;
};

/** Below it a cut's length is noise of floating point, mm. */
const NOISE_MM = 1e-6;

/** A cut is never shorter than its strand needs. */
const wholeMm = ({ cut }: { readonly cut: Cut }): number => Math.ceil(cut.totalMm - NOISE_MM);

/** Components that all pieces of an order take together, by id. */
export function partsOf({ entry, copy, candidate }: Work): ReadonlyMap<string, number> {
  const { document, way } = entry;
  const fresh = isRestring(document, way) ? newParts(copy.design) : null;
  const taken = [...tally(copy.design, candidate.counts)].filter(([id]) => fresh?.has(id) !== false);
  return new Map(taken.map(([id, count]) => [id, count * document.quantity]));
}

/** Cuts of wire for all pieces of an order, whole millimetres. */
export function cutsOf({ entry, copy, candidate }: Work): readonly number[] {
  const { quantity, hand } = entry.document;
  const { strands } = stringing(copy.design, copy.rules, candidate, hand);
  const one = strands.map(wholeMm);
  return Array.from({ length: quantity }, () => one).flat();
}

/** What so many pieces with the same counts take, without an order. @param keepOffcutMm as below */
export function takesOfPiece(
  copy: Snapshot,
  candidate: Candidate,
  many: number,
  keepOffcutMm: number,
): Takes {
  const { design, rules } = copy;
  const { strands } = stringing(design, rules, candidate, 'right');
  const one = strands.map(wholeMm);
  return {
    parts: new Map([...tally(design, candidate.counts)].map(([id, count]) => [id, count * many])),
    cuts: new Map([[wireKey(design.wire.id), Array.from({ length: many }, () => one).flat()]]),
    keepOffcutMm,
  };
}

/** @param keepOffcutMm what is left of an offcut is kept from this length on, mm */
export function takesOf(work: Work, keepOffcutMm: number): Takes {
  const wire = wireKey(work.copy.design.wire.id);
  return { parts: partsOf(work), cuts: new Map([[wire, cutsOf(work)]]), keepOffcutMm };
}
