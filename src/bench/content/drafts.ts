/** Pieces that were previewed without being saved: their pages ask for pictures of them a moment later. */
import type { Piece } from '#catalogue/model/catalogue.ts';

/** As many windows as a maker has open; the oldest goes. */
const MOST_DRAFTS = 8;

let drafts: readonly Piece[] = [];

export function keepDraft(piece: Piece): void {
  drafts = [piece, ...drafts].slice(0, MOST_DRAFTS);
}

/** The newest first. */
export const keptDrafts = (): readonly Piece[] => drafts;
