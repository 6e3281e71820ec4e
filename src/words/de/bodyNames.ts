/** Körperteile in Sätzen über Maße; für sich, für die Frage und für ihre Antwort. */
import type { Measure } from '#core/design/choice.ts';
import type { PieceKind } from '#core/design/design.ts';

type Of = Measure['of'];

export const BODY: Readonly<Record<Of, string>> = {
  wrist: 'Handgelenk',
  ankle: 'Fessel',
  neck: 'Hals',
  length: 'fertiger Länge',
};
/** „für ein Handgelenk von …“ */
export const FOR_BODY: Readonly<Record<Of, string>> = {
  wrist: 'für ein Handgelenk von',
  ankle: 'für eine Fessel von',
  neck: 'für einen Hals von',
  length: 'mit einer Länge von',
};
/** Worum sich eine Art von Stück schließt. */
export const ROUND: Readonly<Record<PieceKind, string>> = {
  bracelet: BODY.wrist,
  anklet: BODY.ankle,
  collar: BODY.neck,
  necklace: BODY.neck,
};
