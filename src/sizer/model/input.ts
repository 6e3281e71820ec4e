/** What a page hands to the island: plain data, as small as sizing allows. */
import type { Limits } from '#core/sizing/sizing.ts';
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
  /** Price at the usual counts, minor units of `rules.currency`. */
  readonly listedMinor: number;
  readonly rules: Rules;
  /** False for past pieces: they can be sized and looked at, and asked about by e-mail only. */
  readonly orderable: boolean;
};

/** Where a browser posts orders: a desk answers with a receipt, a form service passes on what it gets. */
export type PostTarget = { readonly kind: 'desk' | 'form'; readonly address: string };

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
};

/** The piece as it is in the shop, worked out when the page was built. */
export type BuiltPiece = {
  readonly figures: PieceFigures;
  /** For the first measure and an easy sit; null where the piece can't be sized. */
  readonly limits: Limits | null;
};
