/** For which bodies and lengths a piece can be made, from its range. */
import type { Piece } from '#catalogue/model/catalogue.ts';
import type { Measure } from '#core/design/choice.ts';
import type { Rules } from '#core/design/rules.ts';
import type { Range } from '#core/sizing/range.ts';
import { askedOf } from '#core/sizing/target.ts';
import { describe, usual } from '#core/sizing/usual.ts';
import type { PieceKind } from '#core/design/design.ts';
import type { Stretch } from './marks.ts';
import { ASKED_BY } from '../models/sizeRows.ts';

export type Fits = {
  readonly of: Measure['of'];
  readonly stretches: readonly Stretch[];
};

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

/** For which bodies and lengths a piece is right as it lies there, within the tolerance of its kind; none where it isn't ready. */
export function fitsReady({ design, listedMinor, status }: Piece, rules: Rules): readonly Fits[] {
  if (status !== 'available') return [];
  const { kind } = design;
  const { fittedMm } = describe(design, rules, listedMinor, usual(design));
  const within = rules.toleranceMm[kind];
  const measures: readonly Measure['of'][] = kind === 'necklace' ? ['length', 'neck'] : [ASKED_BY[kind]];
  return measures.map((of) => {
    const asked = (mm: number): number => askedOf(rules, kind, of, mm, 'easy');
    return {
      of,
      stretches: [{ leastMm: asked(fittedMm - within), mostMm: asked(fittedMm + within) }],
    };
  });
}
