/** What would be ordered, before anybody has filled in the form. */
import type { Choice, ChosenParts } from '#core/design/choice.ts';
import type { Candidate } from '#core/sizing/sizing.ts';
import type { ShownUnit } from '#core/units/unit.ts';
import type { Made } from '#order/document.ts';
import type { Lang } from '#words/lang.ts';
import type { PieceForSizer, PostForSizer } from '../../model/input.ts';

export type OrderItem = {
  readonly made: Made;
  /** With the parts chosen. */
  readonly piece: PieceForSizer;
  /** Ids of what was chosen instead of the listed parts. */
  readonly parts: ChosenParts;
  readonly lang: Lang;
  readonly choice: Choice;
  /** True where either hand will do: then she wasn't asked. */
  readonly eitherHand: boolean;
  /** The measure as written (nothing for one that lies finished), and the unit of the field it was written in. */
  readonly text: string;
  readonly unit: ShownUnit;
  readonly candidate: Candidate;
  /** null where the shop doesn't ask how it is to reach her. */
  readonly post: PostForSizer | null;
};
