/** What the buyer says of the wearer, as she writes it, and the body that it makes. */
import { figureOf, type Figure, type FigureProblem } from '#core/body/figure.ts';
import type { Sex } from '#core/body/neckBase.ts';
import { parseLength, type LengthProblem } from '#core/units/length.ts';
import type { ShownUnit } from '#core/units/unit.ts';

export type Who = 'unstated' | 'female' | 'male' | 'child';

export type WearerForm = {
  readonly who: Who;
  /** As written; empty where not known. */
  readonly neck: string;
  readonly height: string;
  /** Years, for a child. */
  readonly age: string;
};

export const UNKNOWN_WEARER: WearerForm = { who: 'unstated', neck: '', height: '', age: '' };

export type WearerField = 'neck' | 'height' | 'age';

export type WearerProblem =
  | { readonly field: WearerField; readonly of: 'length'; readonly problem: LengthProblem }
  | { readonly field: WearerField; readonly of: 'figure'; readonly problem: FigureProblem }
  | { readonly field: 'age'; readonly of: 'age' };

export type WearerBody =
  | { readonly ok: true; readonly figure: Figure; readonly sex: Sex }
  | { readonly ok: false; readonly problem: WearerProblem };

/** The body of a form, or the first thing that stands in the way. `unit` is that of bare numbers. */
export function bodyOf(form: WearerForm, unit: ShownUnit): WearerBody {
  const neck = readOptional(form.neck, unit);
  if (typeof neck === 'object' && neck !== null)
    return refuse({ field: 'neck', of: 'length', problem: neck });
  if (form.who === 'child') return childBody(form.age, neck);
  const height = readOptional(form.height, unit);
  if (typeof height === 'object' && height !== null) {
    return refuse({ field: 'height', of: 'length', problem: height });
  }
  return figure({ sex: form.who, neckGirthMm: neck, heightMm: height }, form.who);
}

function childBody(age: string, neckGirthMm: number | null): WearerBody {
  const ageYears = Number(age.trim().replace(',', '.'));
  if (age.trim() === '' || !Number.isFinite(ageYears)) return refuse({ field: 'age', of: 'age' });
  return figure({ ageYears, neckGirthMm }, 'unstated');
}

function figure(wearer: Parameters<typeof figureOf>[0], sex: Sex): WearerBody {
  const result = figureOf(wearer);
  if (result.ok) return { ok: true, figure: result.figure, sex };
  return refuse({ field: FIELD_OF[result.problem.code], of: 'figure', problem: result.problem });
}

const FIELD_OF: Readonly<Record<FigureProblem['code'], WearerField>> = {
  'under-two': 'age',
  'no-child': 'age',
  'girth-absurd': 'neck',
  'height-absurd': 'height',
};

function refuse(problem: WearerProblem): WearerBody {
  return { ok: false, problem };
}

/** Millimetres; null where nothing is written. */
function readOptional(text: string, unit: ShownUnit): number | null | LengthProblem {
  if (text.trim() === '') return null;
  const read = parseLength(text, unit);
  return read.ok ? read.mm : read.problem;
}
