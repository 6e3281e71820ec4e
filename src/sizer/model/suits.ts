/** Whom a piece that lies finished would suit. */
import { MEASURES_OF_KIND, SITS, type Sit } from '#core/design/choice.ts';
import { askedOf } from '#core/sizing/target.ts';
import type { Candidate } from '#core/sizing/sizing.ts';
import type { PieceForSizer } from './input.ts';

/** Girth of the body on which it sits in each way, mm; null for a necklace, which hangs at its length on anybody. */
export function suitsOf(
  { design, rules }: PieceForSizer,
  { fittedMm }: Candidate,
): Readonly<Record<Sit, number>> | null {
  const { kind } = design;
  if (kind === 'necklace') return null;
  const [of] = MEASURES_OF_KIND[kind];
  const girths = SITS.map((sit) => [sit, askedOf(rules, kind, of, fittedMm, sit)] as const);
  return Object.fromEntries(girths) as Record<Sit, number>;
}
