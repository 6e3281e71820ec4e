/** What the bench hands to the board: plain data in the page. */
import type { PieceKind, Design } from '#core/design/design.ts';
import type { Rules } from '#core/design/rules.ts';
import type { ShownUnit } from '#core/units/unit.ts';
import type { Lang } from '#words/lang.ts';
import type { Trays } from './action.ts';
import type { SentDesign } from './saving.ts';

export type BoardInput = {
  readonly lang: Lang;
  readonly unit: ShownUnit;
  readonly rules: Rules;
  readonly piece: { readonly id: string; readonly name: string };
  /** Of the piece's file as the design was read from it; null where there is none yet. */
  readonly digest: string | null;
  /** As its file says; a new piece has nothing on its strand, closed as the newest of its kind. */
  readonly design: Design;
  /** What is laid there first, to be saved or taken back: the piece as it was ordered once. Null for nothing. */
  readonly version: SentDesign | null;
  /** null where it has no price yet. */
  readonly listedMinor: number | null;
  readonly trays: Trays;
  /** Names in her language, by id, where it has another. */
  readonly names: Readonly<Record<string, string>>;
  readonly partNumbers: Readonly<Record<string, string>>;
  /** Where each lies, by id. */
  readonly trayOf: Readonly<Record<string, string>>;
};

/** How long a groove of a board is made at first, mm: room for most pieces of the kind. */
const BOARD_MM: Readonly<Record<PieceKind, number>> = {
  bracelet: 200,
  anklet: 230,
  collar: 400,
  necklace: 480,
};
const STEP_MM = 120;

/** A groove that holds a piece of that length, in steps, so that the board keeps its scale from bead to bead. */
export function boardLengthMm(kind: PieceKind, pieceMm: number): number {
  const least = BOARD_MM[kind];
  return pieceMm <= least ? least : least + STEP_MM * Math.ceil((pieceMm - least) / STEP_MM);
}
