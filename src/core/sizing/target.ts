/** From what a buyer asks to what is fitted, and back. */
import { neckBase } from '../body/neckBase.ts';
import type { PieceKind } from '../design/design.ts';
import { HANDS, MEASURES, MEASURES_OF_KIND, PICKS, SITS } from '../design/choice.ts';
import type { Choice, MeasureOf, Sit } from '../design/choice.ts';
import type { Rules } from '../design/rules.ts';
import type { SizingProblem } from './sizing.ts';

/**
 * Measures that may be meant, mm; beyond them a unit or a digit is wrong. From
 * a child of two to well beyond the largest adult in the surveys `body/` names;
 * lengths from the tightest collar to a rope worn in three rounds.
 */
const SENSE_MM: Readonly<Record<MeasureOf, readonly [number, number]>> = {
  wrist: [80, 300],
  ankle: [110, 400],
  neck: [180, 650],
  length: [200, 3000],
};

/** Pieces of one order; more is a mistake or a mischief. */
const MOST_QUANTITY = 1000;

/** What a sit adds for a kind, mm. */
function easeMm(rules: Rules, kind: PieceKind, sit: Sit): number {
  const ease = rules.easeMm[kind][sit];
  return Number.isFinite(ease) ? ease : 0;
}

const isOneOf = (values: readonly unknown[], value: unknown): boolean => values.includes(value);

/** A choice from outside may be anything at all. */
function misshapen(choice: Choice | null | undefined): SizingProblem | null {
  const measure: unknown = choice?.measure;
  if (typeof measure !== 'object' || measure === null) return { code: 'choice', field: 'measure' };
  if (!isOneOf(MEASURES, choice?.measure.of)) return { code: 'choice', field: 'measure' };
  if (!isOneOf(SITS, choice?.sit)) return { code: 'choice', field: 'sit' };
  if (!isOneOf(HANDS, choice?.hand)) return { code: 'choice', field: 'hand' };
  return isOneOf(PICKS, choice?.pick) ? null : { code: 'choice', field: 'pick' };
}

/** Why a choice can't be sized, or null. Takes any value. */
export function choiceProblem(kind: PieceKind, choice: Choice): SizingProblem | null {
  const shape = misshapen(choice);
  if (shape !== null) return shape;
  const { of, mm } = choice.measure;
  if (!MEASURES_OF_KIND[kind].includes(of)) return { code: 'measure-wrong-kind', of, kind };
  if (typeof mm !== 'number' || !(mm > 0))
    return { code: 'measure-not-positive', mm: Number.isFinite(mm) ? mm : 0 };
  const [leastMm, mostMm] = SENSE_MM[of];
  if (mm < leastMm || mm > mostMm) {
    return { code: 'measure-absurd', mm: Number.isFinite(mm) ? mm : Number.MAX_VALUE, leastMm, mostMm };
  }
  const { quantity } = choice;
  if (!Number.isInteger(quantity) || quantity < 1 || quantity > MOST_QUANTITY) {
    return { code: 'quantity', quantity: Number.isFinite(quantity) ? quantity : 0 };
  }
  return null;
}

/** Finished length or inside girth that meets a body's measure or a wanted length, mm. */
export function targetOf(rules: Rules, kind: PieceKind, of: MeasureOf, mm: number, sit: Sit): number {
  if (of === 'length') return mm;
  const ease = easeMm(rules, kind, sit);
  return kind === 'necklace' ? neckBase(mm).mm + ease : mm + ease;
}

/** The body's measure (or the wanted length) that a finished length or inside girth meets, mm: the inverse of `targetOf`. */
export function askedOf(rules: Rules, kind: PieceKind, of: MeasureOf, fittedMm: number, sit: Sit): number {
  if (of === 'length') return fittedMm;
  const worn = fittedMm - easeMm(rules, kind, sit);
  if (kind !== 'necklace') return worn;
  // The regression is a straight line, so two points of it give its inverse.
  const atNothing = neckBase(0).mm;
  return (worn - atNothing) / (neckBase(1).mm - atNothing);
}
