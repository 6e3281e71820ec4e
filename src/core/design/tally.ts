/** How many of each component a piece takes, without laying it out. */
import type { Counts, Design, Section, Strand } from './design.ts';

/** Times a section's motif stands on the strand: both sides of a mirrored one, a focal once. */
function repeats(strand: Strand, section: Section, count: number): number {
  return strand.mirrored && section.role !== 'focal' ? 2 * count : count;
}

function add(into: Map<string, number>, component: string | null, count: number): void {
  if (component !== null && count > 0) into.set(component, (into.get(component) ?? 0) + count);
}

/** Components of the sections of one strand, by id. */
export function tallyStrand(strand: Strand, counts: readonly number[]): ReadonlyMap<string, number> {
  const tally = new Map<string, number>();
  strand.sections.forEach((section, index) => {
    const times = repeats(strand, section, counts[index] ?? 0);
    for (const part of section.motif) add(tally, part.component, times * part.count);
  });
  return tally;
}

/** Everything that closes a piece: two crimps a strand with their covers and guards, clasp, ring, pendant and its rings. */
export function tallyFindings(design: Design): ReadonlyMap<string, number> {
  const { ends, hanging } = design;
  const tally = new Map<string, number>();
  const strandEnds = 2 * design.strands.length;
  add(tally, ends.crimp, strandEnds);
  add(tally, ends.cover, strandEnds);
  add(tally, ends.guard, strandEnds);
  add(tally, ends.clasp, 1);
  add(tally, ends.ring, 1);
  add(tally, hanging?.pendant ?? null, 1);
  for (const ring of hanging?.rings ?? []) add(tally, ring, 1);
  return tally;
}

/** Every component of a piece with these counts, by id. */
export function tally(design: Design, counts: Counts): ReadonlyMap<string, number> {
  const all = new Map(tallyFindings(design));
  design.strands.forEach((strand, index) => {
    for (const [id, count] of tallyStrand(strand, counts[index] ?? [])) add(all, id, count);
  });
  return all;
}
