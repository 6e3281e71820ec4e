/** Where something is on the board: by its places in the design, so that names may change under it. */
import type { Design, Section, Strand } from '#core/design/design.ts';

/** One run: an entry of a section's motif. Section and part are -1 for the place before all of them. */
export type Place = { readonly strand: number; readonly section: number; readonly part: number };

/** Runs of one section, `from` to `to`, both in it. */
export type Span = {
  readonly strand: number;
  readonly section: number;
  readonly from: number;
  readonly to: number;
};

/** Before everything on a strand. */
export const startOf = (strand: number): Place => ({ strand, section: -1, part: -1 });

export const spanAt = ({ strand, section, part }: Place): Span => ({ strand, section, from: part, to: part });

/** The run at the end of a span, after which more is put. */
export const endOf = ({ strand, section, to }: Span): Place => ({ strand, section, part: to });

/** All of a section. */
export function spanOf(design: Design, strand: number, section: number): Span {
  const motif = design.strands[strand]?.sections[section]?.motif ?? [];
  return { strand, section, from: 0, to: Math.max(0, motif.length - 1) };
}

export const isWhole = (section: Section, { from, to }: Span): boolean =>
  from <= 0 && to >= section.motif.length - 1;

/** A section that is nothing but beads laid one after the other: it stands once and never changes. */
export const isLoose = ({ role, usual, fewest, most }: Section): boolean =>
  role !== 'focal' && usual === 1 && fewest === 1 && most === 1;

/** Every run of a strand in the strand's own order. */
export const runsIn = ({ sections }: Strand, strand: number): Place[] =>
  sections.flatMap(({ motif }, section) => motif.map((_, part) => ({ strand, section, part })));

/** The span nearest to one that may be there no more; null where the strand is empty. */
export function held(design: Design, span: Span | null): Span | null {
  if (span === null) return null;
  const strand = Math.min(span.strand, design.strands.length - 1);
  const sections = design.strands[strand]?.sections ?? [];
  if (sections.length === 0) return null;
  const section = Math.min(Math.max(0, span.section), sections.length - 1);
  const last = (sections[section]?.motif.length ?? 1) - 1;
  const to = Math.min(Math.max(0, span.to), last);
  return { strand, section, from: Math.min(Math.max(0, span.from), to), to };
}
