/** The ways a piece is shown. */
import type { PieceKind } from '#core/design/design.ts';

/** `whole`: as it is shown in lists, on a ground of its own and to no scale. */
export type DrawnView = 'whole' | 'straight' | 'closed';
export type View = DrawnView | 'worn';

/** By kind, the first one first. A necklace is not worn as a ring; a bracelet's wrist is shown closed already. */
export const VIEWS: Readonly<Record<PieceKind, readonly [DrawnView, ...View[]]>> = {
  necklace: ['whole', 'straight', 'worn'],
  collar: ['whole', 'closed', 'worn', 'straight'],
  bracelet: ['whole', 'closed', 'straight'],
  anklet: ['whole', 'closed', 'straight'],
};
