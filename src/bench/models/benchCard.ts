/** The bench card's page: one piece in one size, everything to string it by. */
import type { Hand } from '#core/design/choice.ts';
import type { Candidate } from '#core/sizing/sizing.ts';
import { stringing, type Stringing } from '#core/instructions/stringing.ts';
import type { Snapshot } from '../book/snapshot.ts';
import { groupsOf, type Group } from '#core/instructions/groups.ts';
import type { OrderDetail } from './orderDetail.ts';

/**
 * `agreed`: the piece as it was agreed on, where it was changed since; `now`: as it stands; `then`: as it stood when
 * the order came in; `shown`: with the counts the buyer saw.
 */
export const BASES = ['agreed', 'now', 'then', 'shown'] as const;
export type Basis = (typeof BASES)[number];

export type PieceCard = {
  readonly copy: Snapshot;
  readonly candidate: Candidate;
  readonly card: Stringing;
  /** A list for each strand. */
  readonly strands: readonly (readonly Group[])[];
};

/** The card of an order, calculated one way. */
export type BenchCard = PieceCard & {
  readonly basis: Basis;
  /** The other ways that give something else to string. */
  readonly others: readonly Basis[];
};

type Way = { readonly copy: Snapshot; readonly candidate: Candidate };

/** The card of an order; null where nothing can be strung. `wanted`: unknown or impossible ones fall back to the first that can be strung. */
export function benchCard(detail: OrderDetail, wanted: string | null): BenchCard | null {
  const ways = waysOf(detail);
  const basis =
    BASES.find((one) => one === wanted && ways[one] !== null) ?? BASES.find((one) => ways[one] !== null);
  const way = basis === undefined ? null : ways[basis];
  if (basis === undefined || way === null) return null;
  const others = BASES.filter((one) => one !== basis && ways[one] !== null && !alike(ways[one], way));
  return { ...pieceCard(way.copy, way.candidate, detail.entry.document.hand), basis, others };
}

/** The card of a piece with these counts. */
export function pieceCard(copy: Snapshot, candidate: Candidate, hand: Hand): PieceCard {
  const card = stringing(copy.design, copy.rules, candidate, hand);
  return { copy, candidate, card, strands: card.strands.map(({ rows }) => groupsOf(rows)) };
}

function waysOf({ agreed, now, then }: OrderDetail): Record<Basis, Way | null> {
  const shownBy = then ?? now;
  return {
    agreed: agreed === null ? null : wayOf(agreed.copy, agreed.checked.candidate),
    now: wayOf(now.copy, now.checked.candidate),
    then: then === null ? null : wayOf(then.copy, then.checked.candidate),
    shown: wayOf(shownBy.copy, shownBy.checked.asShown),
  };
}

function wayOf(copy: Snapshot | null, candidate: Candidate | null): Way | null {
  return copy === null || candidate === null ? null : { copy, candidate };
}

/** The same beads in the same order, of the same design. */
function alike(one: Way | null, other: Way): boolean {
  return (
    one !== null &&
    one.copy.revision === other.copy.revision &&
    JSON.stringify(one.candidate.counts) === JSON.stringify(other.candidate.counts)
  );
}
