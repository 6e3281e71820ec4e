/** Every size that the piece can be made in, those that are often asked for and can't be met, and what would close them. */
import type { Design } from '#core/design/design.ts';
import type { Rules } from '#core/design/rules.ts';
import { gapsOf, type Closing } from '#core/sizing/gaps/gaps.ts';
import type { Remedy } from '#core/sizing/gaps/remedies.ts';
import { range } from '#core/sizing/range.ts';
import type { Measure } from '#core/design/choice.ts';
import type { Action } from './action.ts';

export type Sizes = {
  /** What the piece is asked for by: a wrist, an ankle, a neck at an easy sit, or a finished length. */
  readonly of: Measure['of'];
  /** Rising and apart, mm. */
  readonly intervals: readonly { readonly fromMm: number; readonly toMm: number }[];
  readonly missedMm: readonly number[];
  readonly closings: readonly Closing[];
};

const MEASURED: Readonly<Record<Design['kind'], Measure['of']>> = {
  necklace: 'length',
  bracelet: 'wrist',
  anklet: 'ankle',
  collar: 'neck',
};

/** null where the piece can't be sized. Takes a moment for each gap: not for the way of a key. */
export function sizesOf(design: Design, rules: Rules): Sizes | null {
  const known = range(design, rules);
  if (known.status === 'refused') return null;
  const { missedMm, closings } = gapsOf(design, rules);
  const of = MEASURED[design.kind];
  return { of, intervals: of === 'length' ? known.intervals : known.body.easy, missedMm, closings };
}

type Interval = Sizes['intervals'][number];

/** Intervals told as one where the one's end reads like the next one's beginning. */
export function readIntervals(intervals: readonly Interval[], read: (mm: number) => string): Interval[] {
  const told: Interval[] = [];
  for (const next of intervals) {
    const last = told.at(-1);
    if (last !== undefined && read(last.toMm) === read(next.fromMm)) {
      told[told.length - 1] = { fromMm: last.fromMm, toMm: next.toMm };
    } else told.push(next);
  }
  return told;
}

/** A remedy as done at the board; none where something has to be bought first. */
export function actionsFor(design: Design, remedy: Remedy, fillerName: string): readonly Action[] {
  switch (remedy.code) {
    case 'widen-section': {
      const { strand, repeats } = remedy;
      const sections = design.strands[strand]?.sections ?? [];
      const section = sections.findIndex(({ id }) => id === remedy.section);
      const { fewest = 0, most = 0 } = sections[section] ?? {};
      const change = repeats > 0 ? { most: most + repeats } : { fewest: fewest + repeats };
      return [{ type: 'section', strand, section, change }];
    }
    case 'add-filler':
      return design.strands.flatMap((_, strand) => fillerAt(design, strand, remedy, fillerName));
    case 'chain':
      return [{ type: 'ends', change: { extenderMm: remedy.mm } }];
    case 'new-filler':
      return [];
  }
}

/** None to so many beads of a kind next to the clasp, none as a rule. */
function fillerAt(
  { strands }: Design,
  strand: number,
  { component, count }: { readonly component: string; readonly count: number },
  name: string,
): Action[] {
  const section = strands[strand]!.sections.length;
  return [
    { type: 'begin', strand, section, component, name },
    { type: 'section', strand, section, change: { role: 'filler', usual: 0 } },
    { type: 'section', strand, section, change: { most: count } },
    { type: 'section', strand, section, change: { fewest: 0 } },
  ];
}
