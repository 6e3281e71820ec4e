/** The ways a piece is shown. */
import type { PieceKind } from '#core/design/design.ts';

export type DrawnView = 'straight' | 'closed';
export type View = DrawnView | 'worn';

/** By kind, the first one first. A necklace is not worn as a ring; a bracelet's wrist is shown closed already. */
export const VIEWS: Readonly<Record<PieceKind, readonly [DrawnView, ...View[]]>> = {
  necklace: ['straight', 'worn'],
  collar: ['closed', 'worn', 'straight'],
  bracelet: ['closed', 'straight'],
  anklet: ['closed', 'straight'],
};
