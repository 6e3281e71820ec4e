/** Parts of the body in sentences about sizes; apart, for the question and for its answer. */
import type { Measure } from '#core/design/choice.ts';
import type { PieceKind } from '#core/design/design.ts';

type Of = Measure['of'];

export const BODY: Readonly<Record<Of, string>> = {
  wrist: 'wrist',
  ankle: 'ankle',
  neck: 'neck',
  length: 'finished length',
};
/** “for a wrist of …” */
export const FOR_BODY: Readonly<Record<Of, string>> = {
  wrist: 'for a wrist of',
  ankle: 'for an ankle of',
  neck: 'for a neck of',
  length: 'for a finished length of',
};
/** What a kind of piece closes round. */
export const ROUND: Readonly<Record<PieceKind, string>> = {
  bracelet: BODY.wrist,
  anklet: BODY.ankle,
  collar: BODY.neck,
  necklace: BODY.neck,
};
