/**
 * What comes out when a piece is sized. Codes and figures only: `words/`
 * makes sentences of them, so that buyer, maker and terminal read the same.
 */
import type { Counts, PieceKind } from '../design/design.ts';
import type { ValidationError } from '../design/validationError.ts';
import type { Choice, MeasureOf } from '../design/choice.ts';
import type { HandAdvice } from './hand/hand.ts';
import type { Placed } from '../design/expand.ts';

/** One section's change from the design as it stands in the shop. */
export type Change = {
  readonly strand: number;
  readonly section: string;
  readonly from: number;
  readonly to: number;
  /** Components of each kind added (positive) or left out (negative), both sides together. */
  readonly parts: readonly { readonly component: string; readonly count: number }[];
};

/** One piece that can be made. */
export type Candidate = {
  readonly counts: Counts;
  /** The measure that was fitted: finished length or inside girth. */
  readonly fittedMm: number;
  readonly errorMm: number;
  readonly withinTolerance: boolean;
  /** Longest strand where there are several. */
  readonly finishedLengthMm: number;
  /** Least of the strands where there are several. */
  readonly insideGirthMm: number;
  /** How far the extender chain is let out for these figures; 0 without one. */
  readonly chainUsedMm: number;
  readonly changes: readonly Change[];
  readonly priceMinor: number;
  readonly massG: number;
  /** Each strand in stringing order, clasp end to ring end, crimps and covers included, clasp and ring not. */
  readonly sequences: readonly (readonly Placed[])[];
};

/** A section by its strand's place in the design and its id, which is unique within that strand only. */
export type SectionAt = { readonly strand: number; readonly section: string };

/** The measures this piece can be made in, and what ends them. */
export type Limits = {
  readonly leastMm: number;
  readonly mostMm: number;
  /** The same limits as the buyer measures: girth of the body, or finished length. */
  readonly leastAskedMm: number;
  readonly mostAskedMm: number;
  /** Sections that stand at their fewest (least) or most. */
  readonly leastBinds: readonly SectionAt[];
  readonly mostBinds: readonly SectionAt[];
  /** Components whose stock, not the maker's range, ends the most. */
  readonly mostStock: readonly string[];
};

/** What would bring a piece to the wanted size that can't be brought there as it is. */
export type Help =
  /** `count` more of a component at each of `sides` ends of the strand would come within `offMm` of the target. */
  | {
      readonly code: 'add-component';
      readonly strand: number;
      readonly component: string;
      readonly count: number;
      readonly sides: 1 | 2;
      readonly offMm: number;
    }
  /** The same with a section let go `repeats` beyond its most (positive) or below its fewest (negative). */
  | {
      readonly code: 'widen-section';
      readonly strand: number;
      readonly section: string;
      readonly repeats: number;
      readonly offMm: number;
    }
  /** `count` more of a component in stock would let the piece be made within tolerance. */
  | { readonly code: 'more-stock'; readonly component: string; readonly count: number };

/** Why a choice can't be sized at all. Each carries what the message needs. */
export type SizingProblem =
  | { readonly code: 'measure-not-positive'; readonly mm: number }
  | {
      readonly code: 'measure-absurd';
      readonly mm: number;
      readonly leastMm: number;
      readonly mostMm: number;
    }
  | { readonly code: 'measure-wrong-kind'; readonly of: MeasureOf; readonly kind: PieceKind }
  | { readonly code: 'quantity'; readonly quantity: number }
  /** The choice itself is no choice: `field` is missing or is none of what it may be. */
  | { readonly code: 'choice'; readonly field: 'measure' | 'sit' | 'hand' | 'pick' }
  /** The stock doesn't reach for the smallest piece: `need` of `component`, `have` there. */
  | { readonly code: 'stock'; readonly component: string; readonly have: number; readonly need: number }
  /**
   * No size suits all strands: one is never below `leastMm`, another never above `mostMm`, in the
   * first strand's measure. `short`: components of which more would bring them together; empty
   * where the strands' own sections keep them apart.
   */
  | {
      readonly code: 'strands-apart';
      readonly leastMm: number;
      readonly mostMm: number;
      readonly short: readonly string[];
    }
  /** The search ran into its cap before it was through, so no answer is claimed. */
  | { readonly code: 'search-limit' }
  | { readonly code: 'design'; readonly problems: readonly ValidationError[] };

/** In place of an answer where there is none. */
export type Refused = { readonly status: 'refused'; readonly problem: SizingProblem };

export type Sizing =
  | {
      /** `fits`: `chosen` is within tolerance. `near`: it isn't; `below` and `above` are what can be made. */
      readonly status: 'fits' | 'near';
      readonly choice: Choice;
      readonly fitted: 'length' | 'girth';
      readonly targetMm: number;
      readonly toleranceMm: number;
      /** The candidate that `choice.pick` names; the proven optimum for `best`. */
      readonly chosen: Candidate;
      readonly best: Candidate;
      /** Only where `near`: the nearest piece not above / not below the target; null where there is none. */
      readonly below: Candidate | null;
      readonly above: Candidate | null;
      readonly limits: Limits;
      /** What would help where `near`; empty where it fits. */
      readonly help: readonly Help[];
      readonly hand: HandAdvice;
      /** True: no other counts are better by the order of preference. Always true where the status is given. */
      readonly proven: true;
    }
  | {
      /** The wanted size lies outside what the piece can be. `nearest` is the piece at that limit. */
      readonly status: 'outside';
      readonly choice: Choice;
      readonly fitted: 'length' | 'girth';
      readonly targetMm: number;
      readonly toleranceMm: number;
      readonly side: 'below' | 'above';
      readonly limits: Limits;
      readonly help: readonly Help[];
      readonly nearest: Candidate;
    }
  | Refused;
