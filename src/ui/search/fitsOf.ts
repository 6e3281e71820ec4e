/** For which bodies and lengths a piece can be made, from its range. */
import type { Measure } from '#core/design/choice.ts';
import type { Range } from '#core/sizing/range.ts';
import type { PieceKind } from '#core/design/design.ts';
import type { Stretch } from './marks.ts';
import { ASKED_BY } from '../models/sizeRows.ts';

export type Fits = { readonly of: Measure['of']; readonly stretches: readonly Stretch[] };

/** By the girth it fits with an easy sit; a necklace by its finished length, and by the neck too. */
export function fitsOf(kind: PieceKind, range: Range): readonly Fits[] {
  if (range.status === 'refused') return [];
  const stretches = (intervals: typeof range.intervals): Stretch[] =>
    intervals.map(({ fromMm, toMm }) => ({ leastMm: fromMm, mostMm: toMm }));
  const body = stretches(range.body.easy);
  if (kind !== 'necklace') return [{ of: ASKED_BY[kind], stretches: body }];
  return [
    { of: 'length', stretches: stretches(range.intervals) },
    { of: 'neck', stretches: body },
  ];
}
