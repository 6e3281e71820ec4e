/** Small changes of a design that let it be made in more sizes: never in fewer, for what it could be it still can. */
import { MOST_REPEATS } from '../../design/caps.ts';
import type { Component } from '../../design/component.ts';
import type { Design, Section } from '../../design/design.ts';

export type Remedy =
  /** `repeats` more than its most (positive) or fewer than its fewest (negative). */
  | {
      readonly code: 'widen-section';
      readonly strand: number;
      readonly section: string;
      readonly repeats: number;
    }
  /** A filler next to the clasp, of one of the piece's own components: none to `count`, on every strand. */
  | { readonly code: 'add-filler'; readonly component: string; readonly count: number }
  /** A filler next to the clasp of a bead or spacer this long, which the piece doesn't have: none to `count`, on every strand. */
  | { readonly code: 'new-filler'; readonly alongMm: number; readonly count: number }
  /** A chain to let the ring end out by. */
  | { readonly code: 'chain'; readonly mm: number };

export type Remedied = { readonly remedy: Remedy; readonly design: Design };

/** Repeats beyond a section's range; with more it would be another. */
const WIDENED = [1, -1, 2, -2];
/** Fillers more at an end; beyond that they show. */
const COUNTS = [1, 2, 3];
/** Lengths that spacers come in, mm (common practice, no source). */
const SPACERS_MM = [1, 1.5, 2, 2.5, 3, 3.5, 4, 5, 6];
/** Chains as they are cut, mm (common practice, no source). */
const CHAINS_MM = [10, 20, 30, 50];

/** Each section of a strand of which `wanted` is true, let go a little further. */
function widened(design: Design, wanted: (section: Section) => boolean): Remedied[] {
  return design.strands.flatMap((strand, at) =>
    strand.sections.flatMap((section, index): Remedied[] =>
      section.role === 'focal' || !wanted(section)
        ? []
        : WIDENED.flatMap((repeats) => {
            const fewest = section.fewest + Math.min(0, repeats);
            const most = section.most + Math.max(0, repeats);
            if (fewest < 0 || most > MOST_REPEATS) return [];
            const changed = { ...section, fewest, most };
            const longer = { ...strand, sections: strand.sections.with(index, changed) };
            const remedy = { code: 'widen-section', strand: at, section: section.id, repeats } as const;
            return [{ remedy, design: { ...design, strands: design.strands.with(at, longer) } }];
          }),
    ),
  );
}

/** The design with a filler of one component at the clasp end of every strand. */
function withFiller(design: Design, component: Component, count: number): Design {
  const filler: Section = {
    id: 'filler-beside-the-clasp',
    name: '',
    motif: [{ component: component.id, count: 1 }],
    usual: 0,
    fewest: 0,
    most: count,
    role: 'filler',
    cost: null,
  };
  return {
    ...design,
    components: { ...design.components, [component.id]: component },
    strands: design.strands.map((strand) => ({ ...strand, sections: [...strand.sections, filler] })),
  };
}

/** Beads and spacers of the piece but for its focal, of which another beside the clasp would be another piece; smallest first. */
function ownBeads({ strands, components }: Design): Component[] {
  const named = strands.flatMap(({ sections }) =>
    sections.filter(({ role }) => role !== 'focal').flatMap(({ motif }) => motif),
  );
  return [...new Set(named.map(({ component }) => component))]
    .map((id) => components[id]!)
    .filter(({ kind }) => kind === 'bead' || kind === 'spacer')
    .sort((one, other) => one.alongMm - other.alongMm);
}

const filledWithOwn = (design: Design): Remedied[] =>
  ownBeads(design).flatMap((component) =>
    COUNTS.map((count) => ({
      remedy: { code: 'add-filler', component: component.id, count },
      design: withFiller(design, component, count),
    })),
  );

function filledAnew(design: Design): Remedied[] {
  const own = ownBeads(design);
  const [smallest] = own;
  if (smallest === undefined) return [];
  const lengths = SPACERS_MM.filter((alongMm) => own.every((one) => one.alongMm !== alongMm));
  return lengths.flatMap((alongMm) => {
    const spacer: Component = {
      ...smallest,
      ...{ id: 'spacer-to-buy', kind: 'spacer', shape: 'tube', alongMm, stock: null, roundingMm: 0 },
    };
    return COUNTS.map((count) => ({
      remedy: { code: 'new-filler', alongMm, count } as const,
      design: withFiller(design, spacer, count),
    }));
  });
}

function chained(design: Design): Remedied[] {
  const { ends } = design;
  if (ends.ring === null || ends.extenderMm > 0) return [];
  return CHAINS_MM.map((mm) => ({
    remedy: { code: 'chain', mm },
    design: { ...design, ends: { ...ends, extenderMm: mm } },
  }));
}

const isFiller = ({ role }: Section): boolean => role === 'filler';
const varies = ({ fewest, most }: Section): boolean => fewest < most;

/** Changes worth trying, those that show least first. */
export const remediesOf = (design: Design): readonly Remedied[] => [
  ...widened(design, isFiller),
  ...filledWithOwn(design),
  ...widened(design, (section) => !isFiller(section) && varies(section)),
  ...filledAnew(design),
  ...chained(design),
  ...widened(design, (section) => !isFiller(section) && !varies(section)),
];
