/** What a page hands to the island: plain data, as small as sizing allows. */
import type { Alternatives } from '#core/design/alternatives.ts';
import type { ChosenParts, Sit } from '#core/design/choice.ts';
import type { HandAdvice } from '#core/sizing/hand/hand.ts';
import type { Limits } from '#core/sizing/sizing.ts';
import type { PostRules } from '#core/post/rules.ts';
import type { Rules } from '#core/design/rules.ts';
import type { Design } from '#core/design/design.ts';
import type { ShownUnit } from '#core/units/unit.ts';
import type { PieceFigures } from './figures.ts';

/** One piece, as much of it as sizing, drawing and ordering need. */
export type PieceForSizer = {
  readonly id: string;
  /** In the page's language. */
  readonly name: string;
  readonly revision: string;
  /** Without fault by `validateDesign`, as every piece of a catalogue that was built is. */
  readonly design: Design;
  /** What she may choose instead of its clasp and pendant; left out where nothing is offered. */
  readonly alternatives?: Alternatives;
  /** The same as she reads of it; left out likewise. */
  readonly offers?: readonly PartOffer[];
  /** What the listed price is for, where `design` has another clasp or pendant than it. */
  readonly listed?: Design;
  /** Price at the usual counts, minor units of `rules.currency`. */
  readonly listedMinor: number;
  readonly rules: Rules;
  /** False for past pieces: they can be sized and looked at, and asked about by e-mail only. */
  readonly orderable: boolean;
  /** True where one lies finished, to be had as it lies there. */
  readonly ready: boolean;
};

/** A clasp or pendant that may be chosen instead of the listed one, as it is told. */
export type PartOffer = {
  readonly part: keyof ChosenParts;
  readonly id: string;
  readonly name: string;
  /** What it adds to the price at the usual counts, minor units; below 0 where it is less. */
  readonly differenceMinor: number;
  /** What is to be minded with it and not with the listed one. */
  readonly cautions: readonly string[];
};

/** Where a browser posts orders: a desk answers with a receipt, a form service passes on what it gets. */
export type PostTarget = { readonly kind: 'desk' | 'form'; readonly address: string };

/** How the shop's pieces reach a buyer. */
export type PostForSizer = {
  readonly rules: PostRules;
  /** Codes of the countries posted to, one after the other: a list of them would double the page's props. */
  readonly countries: string;
  /** Those of them that have no postcodes, likewise. */
  readonly withoutPostcode: string;
  /** Where and when she can come for hers, in the page's language; null where she can't. */
  readonly collection: string | null;
};

/** The shop, as much of it as ordering needs. */
export type ShopForSizer = {
  readonly name: string;
  readonly email: string;
  /** null: orders go by e-mail. */
  readonly postTo: PostTarget | null;
  /** Unit shown before the buyer has chosen one. */
  readonly unit: ShownUnit;
  /** Address of the slip page, without fragment, in the page's language. */
  readonly slip: string;
  /** Address of the folder of the pieces' pages, in the page's language. */
  readonly pieces: string;
  /** null where buyers aren't asked. */
  readonly post: PostForSizer | null;
};

/** The piece as it is in the shop, worked out when the page was built. */
export type BuiltPiece = {
  readonly figures: PieceFigures;
  /** For the first measure and an easy sit; null where the piece can't be sized. */
  readonly limits: Limits | null;
  /** Whether it matters which hand works the clasp, for a right one. */
  readonly hand: HandAdvice;
  /** Whom the one that lies finished would suit; null for a necklace, left out where none lies there. */
  readonly suits?: Readonly<Record<Sit, number>> | null;
};
