/**
 * "Can be made to my size" as filters of the search index: a piece carries the
 * first and the last size it can be made for, and the sizes between that it
 * can't, all in whole steps. A query asks for pieces whose first is not above
 * and whose last is not below the wanted size, without those that miss it.
 * Two short values a piece cost the index far less than every size it fits.
 */
import type { Measure } from '#core/design/choice.ts';

type Of = Measure['of'];

export const FITS_OF = ['wrist', 'ankle', 'neck', 'length'] as const satisfies readonly Of[];

/** Steps, mm: finer than anyone measures a girth; a necklace's length is bought by the half inch. */
export const STEP_MM: Readonly<Record<Of, number>> = {
  wrist: 2,
  ankle: 2,
  neck: 2,
  length: 5,
};

/** Sizes that marks may have, mm: what people measure, and no more values than a query can name. */
export const SPAN_MM: Readonly<Record<Of, readonly [number, number]>> = {
  wrist: [100, 260],
  ankle: [150, 360],
  neck: [220, 520],
  length: [300, 1500],
};

/** A stretch of sizes, both ends included, mm. */
export type Stretch = { readonly leastMm: number; readonly mostMm: number };

export type Marks = {
  readonly from: number;
  readonly to: number;
  readonly gaps: readonly number[];
};

/** Whole steps within a stretch, mm. */
function stepsIn(of: Of, { leastMm, mostMm }: Stretch): number[] {
  const step = STEP_MM[of];
  const [least, most] = SPAN_MM[of];
  const first = Math.ceil(Math.max(leastMm, least) / step - 1e-9);
  const last = Math.floor(Math.min(mostMm, most) / step + 1e-9);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => (first + index) * step);
}

/**
 * Marks of a piece that fits within the stretches (ascending, apart).
 * @returns null where no whole step lies in any of them
 */
export function marksOf(of: Of, stretches: readonly Stretch[]): Marks | null {
  const fits = new Set(stretches.flatMap((stretch) => stepsIn(of, stretch)));
  if (fits.size === 0) return null;
  const from = Math.min(...fits);
  const to = Math.max(...fits);
  const all = stepsIn(of, { leastMm: from, mostMm: to });
  return { from, to, gaps: all.filter((mm) => !fits.has(mm)) };
}

/** Sizes, in whole steps, that a piece fits as it lies there: few, since nothing of it is changed any more. */
export const ownMarks = (of: Of, stretch: Stretch): readonly number[] => stepsIn(of, stretch);

/** Names of the filters that hold the marks. */
export const markNames = (of: Of): Readonly<Record<'from' | 'to' | 'gap' | 'own', string>> => ({
  from: `${of}-from`,
  to: `${of}-to`,
  gap: `${of}-gap`,
  own: `${of}-own`,
});

export type FitsFilter = Readonly<
  Record<string, { readonly any: readonly string[] } | { readonly not: string }>
>;

/** The wanted size in whole steps, kept within the span. */
export function nearestStep(of: Of, mm: number): number {
  const [least, most] = SPAN_MM[of];
  return Math.min(most, Math.max(least, Math.round(mm / STEP_MM[of]) * STEP_MM[of]));
}

/**
 * The filters that a wanted size puts on a query, or any size from `mm` to `mostMm`.
 * @param ready true where only what lies there is asked for: then its own size counts
 */
export function fitsFilter(of: Of, mm: number, mostMm = mm, ready = false): FitsFilter {
  const [least, most] = SPAN_MM[of];
  const from = nearestStep(of, mm);
  const to = nearestStep(of, mostMm);
  const names = markNames(of);
  const values = (leastMm: number, upToMm: number): string[] =>
    stepsIn(of, { leastMm, mostMm: upToMm }).map(String);
  if (ready) return { [names.own]: { any: values(from, to) } };
  return {
    [names.from]: { any: values(least, to) },
    [names.to]: { any: values(from, most) },
    // Between two sizes there is hardly a piece that can be made in none.
    ...(from === to && { [names.gap]: { not: String(from) } }),
  };
}
