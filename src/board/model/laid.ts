/** What lies on the board at the usual counts, bead for bead, and which run of the design each belongs to. */
import type { Design, Strand } from '#core/design/design.ts';
import { expand, type Placed } from '#core/design/expand.ts';
import { runsOf } from '#core/design/runs.ts';
import { usualCounts } from '#core/design/usualCounts.ts';
import type { Place, Span } from './place.ts';

/** As the drawing numbers them: what is seen of a strand, clasp end to ring end. null for crimps and covers. */
export type PlacesOfStrand = readonly (Place | null)[];

export type LaidPiece = {
  readonly sequences: readonly (readonly Placed[])[];
  readonly places: readonly PlacesOfStrand[];
};

/** The run of every bead of a strand, in stringing order. */
function beadPlaces(strand: Strand, index: number, design: Design): Place[] {
  return runsOf(strand).flatMap(({ section, motif, side }) => {
    const last = motif.length - 1;
    const once = motif.flatMap(({ component, count }, at): Place[] => {
      if (design.components[component] === undefined) return [];
      const place = { strand: index, section, part: side === 'left' ? last - at : at };
      return Array.from({ length: count }, () => place);
    });
    return Array.from({ length: strand.sections[section]?.usual ?? 0 }, () => once).flat();
  });
}

export function layPiece(design: Design): LaidPiece {
  const sequences = expand(design, usualCounts(design));
  const places = sequences.map((sequence, index) => {
    const strand = design.strands[index];
    const beads = strand === undefined ? [] : beadPlaces(strand, index, design);
    let next = 0;
    return sequence
      .filter(({ covered }) => covered !== true)
      .map(({ section }) => (section === 'end' ? null : (beads[next++] ?? null)));
  });
  return { sequences, places };
}

export const isIn = (span: Span, place: Place): boolean =>
  place.strand === span.strand &&
  place.section === span.section &&
  place.part >= span.from &&
  place.part <= span.to;
