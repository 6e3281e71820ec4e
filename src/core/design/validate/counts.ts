/** Counts that make sense: a usual one between fewest and most, a focal that stands once, strands that fit the clasp. */
import type { Design, Section, Strand } from '../design.ts';
import type { ValidationError } from '../validationError.ts';
import { MOST_ON_STRAND } from '../caps.ts';
import { report } from './shape.ts';

function validateSection(
  section: Section,
  index: number,
  strand: Strand,
  at: string,
  problems: ValidationError[],
): void {
  const { id, usual, fewest, most } = section;
  const args = { section: id, usual, fewest, most };
  if (fewest > usual || usual > most) report(problems, 'bad-counts', at, { ...args, why: 'order' });
  if (section.motif.length === 0) report(problems, 'bad-counts', at, { ...args, why: 'empty-motif' });
  if (section.role !== 'focal') return;
  if (fewest !== usual || usual !== most)
    report(problems, 'bad-counts', at, { ...args, why: 'focal-changes' });
  if (!strand.mirrored) return;
  if (usual !== 1) report(problems, 'bad-counts', at, { ...args, why: 'focal-once' });
  if (index !== 0) report(problems, 'bad-counts', at, { ...args, why: 'focal-first' });
}

/** Components on the strand at its most. */
function mostOn(strand: Strand): number {
  return strand.sections.reduce((sum, section) => {
    const once = section.motif.reduce((all, part) => all + part.count, 0);
    return sum + once * section.most * (strand.mirrored && section.role !== 'focal' ? 2 : 1);
  }, 0);
}

function validateStrand(strand: Strand, at: string, problems: ValidationError[]): void {
  const seen = new Set<string>();
  strand.sections.forEach((section, index) => {
    const where = `${at}.sections.${index}`;
    if (seen.has(section.id)) report(problems, 'bad-counts', where, { section: section.id, why: 'same-id' });
    seen.add(section.id);
    validateSection(section, index, strand, where, problems);
  });
  const value = mostOn(strand);
  if (value === 0) report(problems, 'no-strand', at, { strand: strand.id });
  if (value > MOST_ON_STRAND) report(problems, 'too-large', at, { value, least: 0, most: MOST_ON_STRAND });
}

/** Nested strands may share the one ring of a plain clasp; side by side each needs its own. */
function validateWays(design: Design, problems: ValidationError[]): void {
  const strands = design.strands.length;
  if (design.lie === 'single' && strands > 1) {
    report(problems, 'ways', 'lie', { strands, ways: 1, why: 'single' });
  }
  const ways = design.components[design.ends.clasp]?.ways ?? 1;
  const shared = design.lie === 'nested' && ways === 1;
  if (strands > ways && !shared) {
    report(problems, 'ways', 'ends.clasp', { strands, ways, clasp: design.ends.clasp, why: 'clasp' });
  }
}

export function validateCounts(design: Design, problems: ValidationError[]): void {
  if (design.strands.length === 0) report(problems, 'no-strand', 'strands', {});
  design.strands.forEach((strand, index) => validateStrand(strand, `strands.${index}`, problems));
  validateWays(design, problems);
}
