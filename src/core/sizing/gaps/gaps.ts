/** Common sizes that a piece can't be made in, and what would let it be. */
import type { Measure } from '../../design/choice.ts';
import type { Design } from '../../design/design.ts';
import type { Rules } from '../../design/rules.ts';
import { validateDesign } from '../../design/validate/validateDesign.ts';
import { range } from '../range.ts';
import { sizeChecked } from '../sizeChecked.ts';
import { COMMON_SIZES, USUAL_SIT } from './commonSizes.ts';
import { remediesOf, type Remedy } from './remedies.ts';

/** Sizes that one remedy closes; null: none of those tried does. */
export type Closing = { readonly sizesMm: readonly number[]; readonly remedy: Remedy | null };

export type Gaps = {
  readonly of: Measure['of'];
  /** Common sizes between the piece's least and most that it doesn't meet within tolerance, rising; mm as a buyer measures. */
  readonly missedMm: readonly number[];
  /** One remedy for all of them where there is one, else one for each. */
  readonly closings: readonly Closing[];
};

const NOTHING_MISSED = { missedMm: [], closings: [] } as const;

/** Common sizes within the piece's reach that no interval of its range holds. */
export function missedSizes(design: Design, rules: Rules): readonly number[] {
  const common = COMMON_SIZES[design.kind];
  if (common === null) return [];
  const known = range(design, rules);
  if (known.status === 'refused') return [];
  const { leastAskedMm, mostAskedMm } = known.limits;
  const met = common.of === 'length' ? known.intervals : known.body[USUAL_SIT];
  return common.mm.filter(
    (mm) =>
      mm >= leastAskedMm && mm <= mostAskedMm && !met.some(({ fromMm, toMm }) => mm >= fromMm && mm <= toMm),
  );
}

/** Whether a design comes out within tolerance at a measure. The price is nothing to a size. */
function meets(design: Design, rules: Rules, measure: Measure): boolean {
  const choice = { measure, sit: USUAL_SIT, hand: 'right', pick: 'best', quantity: 1 } as const;
  return sizeChecked(design, rules, 0, choice).status === 'fits';
}

/**
 * The gaps of a design, each remedy proven by sizing the design that it makes.
 * Nothing is thrown; a design that can't be sized has none.
 */
export function gapsOf(design: Design, rules: Rules): Gaps {
  const of = COMMON_SIZES[design.kind]?.of ?? 'length';
  const missedMm = missedSizes(design, rules);
  if (missedMm.length === 0) return { of, ...NOTHING_MISSED };
  const sound = remediesOf(design).filter((one) => validateDesign(one.design).length === 0);
  const closes = (sizesMm: readonly number[]): Remedy | null =>
    sound.find((one) => sizesMm.every((mm) => meets(one.design, rules, { of, mm })))?.remedy ?? null;
  const all = closes(missedMm);
  if (all !== null) return { of, missedMm, closings: [{ sizesMm: missedMm, remedy: all }] };
  const each = missedMm.map((mm): Closing => ({ sizesMm: [mm], remedy: closes([mm]) }));
  return { of, missedMm, closings: each };
}
