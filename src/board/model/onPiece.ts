/** What is done to strands as wholes and to the piece. */
import { MOST_STRANDS } from '#core/design/caps.ts';
import type { Design, Ends, Section, Strand } from '#core/design/design.ts';
import { shortName } from '#core/design/shortName.ts';
import { closesOnItself } from '#core/design/swap.ts';
import type { Trays } from './action.ts';

const backwards = (section: Section): Section => ({
  ...section,
  motif: section.motif.toReversed(),
  role: section.role === 'focal' ? 'body' : section.role,
});

/** Written out from clasp to ring, it looks as it did mirrored. */
function unmirrored({ sections }: Strand): Section[] {
  const [first, ...others] = sections;
  const middle = first?.role === 'focal' ? [{ ...first, role: 'body' as const }] : [];
  const sides = first?.role === 'focal' ? others : sections;
  return [...sides.toReversed().map(backwards), ...middle, ...sides];
}

/** A strand that mirrors itself or doesn't. What lies there is taken for one side, from the middle outwards. */
export function setMirrored(strand: Strand, mirrored: boolean): Strand {
  if (strand.mirrored === mirrored) return strand;
  return { ...strand, mirrored, sections: mirrored ? strand.sections : unmirrored(strand) };
}

export function addStrand(design: Design, like: number): Design {
  const model = design.strands[like];
  if (model === undefined || design.strands.length >= MOST_STRANDS) return design;
  const taken = new Set(design.strands.map(({ id }) => id));
  const strand = { ...model, id: shortName('strand', taken) };
  return { ...design, strands: design.strands.toSpliced(like + 1, 0, strand) };
}

export function removeStrand(design: Design, at: number): Design {
  return design.strands.length < 2 ? design : { ...design, strands: design.strands.toSpliced(at, 1) };
}

/** Other parts at the ends; a clasp of two halves needs no ring, any other finds one again. */
export function setEnds(design: Design, change: Partial<Ends>, { components }: Trays): Design {
  const ends = { ...design.ends, ...change };
  const clasp = components[ends.clasp];
  const needs = clasp !== undefined && !closesOnItself(clasp);
  if (change.clasp === undefined || change.ring !== undefined || clasp === undefined) {
    return { ...design, ends };
  }
  if (!needs && ends.extenderMm === 0) return { ...design, ends: { ...ends, ring: null } };
  const ring = ends.ring ?? ringLike(clasp.material, components);
  return { ...design, ends: { ...ends, ring } };
}

/** A ring of that material before any other; null where there is none. */
function ringLike(material: string, components: Trays['components']): string | null {
  const rings = Object.values(components).filter(({ kind }) => kind === 'ring');
  return (rings.find((ring) => ring.material === material) ?? rings[0])?.id ?? null;
}

/** One component instead of another wherever it stands. */
export function exchange(design: Design, from: string, to: string): Design {
  const other = <Id extends string | null>(id: Id): Id | string => (id === from ? to : id);
  const { ends, hanging } = design;
  return {
    ...design,
    strands: design.strands.map((strand) => ({
      ...strand,
      sections: strand.sections.map((section) => ({
        ...section,
        motif: section.motif.map((part) => ({ ...part, component: other(part.component) })),
      })),
    })),
    ends: {
      ...ends,
      clasp: other(ends.clasp),
      ring: other(ends.ring),
      crimp: other(ends.crimp),
      cover: other(ends.cover),
      guard: other(ends.guard),
    },
    hanging: hanging && { pendant: other(hanging.pendant), rings: hanging.rings.map(other) },
  };
}
