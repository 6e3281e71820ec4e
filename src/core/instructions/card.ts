/** What a bench card holds: everything the maker needs to string one piece. */
import type { Wire } from '../design/component.ts';
import type { Mass } from '../design/mass/mass.ts';
import type { CoverFit, CrimpFit } from '../design/ends/crimp.ts';
import type { Cut } from '../design/ends/cut.ts';
import type { GuardCheck } from '../design/ends/guard.ts';
import type { Flexibility, Strength } from './strength.ts';
import type { TailCheck } from './tail.ts';
import type { HandAdvice } from '../sizing/hand/hand.ts';
import type { Balance } from './balance.ts';
import type { Board } from './board.ts';
import type { End, Held } from './held.ts';
import type { HungPendant } from './hungPendant.ts';
import type { Row } from './rows.ts';

export type StrandCard = {
  readonly id: string;
  /** Clasp to ring. */
  readonly rows: readonly Row[];
  /** Components strung, crimps and covers not counted. */
  readonly count: number;
  /** Chain not let out. */
  readonly finishedLengthMm: number;
  /** Wire left free between the beads so that the closed strand can bend. */
  readonly slackMm: number;
  readonly cut: Cut;
  /** Wire to let stand out of the first crimp: the tail, and what to hold it by. */
  readonly outMm: number;
  readonly board: Board;
  readonly tails: { readonly clasp: TailCheck; readonly ring: TailCheck };
};

export type EndsCard = {
  /** What each end's wire loop is led round. */
  readonly held: Readonly<Record<End, Held>>;
  readonly clasp: string;
  readonly ring: string | null;
  readonly loopMm: number;
  readonly crimp: CrimpFit;
  /** Chain the ring end is extended by, and how far it is let out for this size; 0 without one. */
  readonly extenderMm: number;
  readonly chainUsedMm: number;
  /** Whole links of that chain, and in which of them this size closes, 0 for none; null where their length isn't known. */
  readonly links: number | null;
  readonly link: number | null;
  /** Over each crimp; null: it is left bare. */
  readonly coverId: string | null;
  /** How the cover takes the closed crimp; null without one, or where a size isn't stated. */
  readonly cover: CoverFit | null;
  /** Bare wire to leave beside a crimp, either side, for the cover that is longer than it; 0 without one. */
  readonly roomMm: number;
  readonly guard: GuardCheck | null;
};

/** The card without its steps. */
export type Card = {
  readonly hand: HandAdvice;
  readonly wire: Wire;
  readonly flexibility: Flexibility;
  readonly strands: readonly StrandCard[];
  readonly ends: EndsCard;
  readonly pendant: HungPendant | null;
  readonly balance: Balance;
  readonly mass: Mass;
  readonly strength: Strength;
  /** The longest strand's. */
  readonly finishedLengthMm: number;
};
