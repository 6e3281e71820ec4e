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
  const { usual, fewest, most } = section;
  const about = { at, section: section.id };
  if (fewest > usual || usual > most)
    report(problems, { code: 'counts-order', ...about, fewest, usual, most });
  if (section.motif.length === 0) report(problems, { code: 'section-empty', ...about });
  if (section.role !== 'focal') return;
  if (fewest !== usual || usual !== most) report(problems, { code: 'focal-changes', ...about, fewest, most });
  if (!strand.mirrored) return;
  if (usual !== 1) report(problems, { code: 'focal-not-once', ...about, usual });
  if (index !== 0) report(problems, { code: 'focal-not-first', ...about });
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
    if (seen.has(section.id)) report(problems, { code: 'section-twice', at: where, section: section.id });
    seen.add(section.id);
    validateSection(section, index, strand, where, problems);
  });
  const count = mostOn(strand);
  if (count === 0) report(problems, { code: 'strand-empty', at });
  if (count > MOST_ON_STRAND) report(problems, { code: 'strand-too-long', at, count, most: MOST_ON_STRAND });
}

/** Nested strands may share the one ring of a plain clasp; side by side each needs its own. */
function validateWays(design: Design, problems: ValidationError[]): void {
  const strands = design.strands.length;
  if (design.lie === 'single' && strands > 1) {
    report(problems, { code: 'lie-single', at: 'lie', strands });
  }
  const { clasp } = design.ends;
  const ways = design.components[clasp]?.ways ?? 1;
  const shared = design.lie === 'nested' && ways === 1;
  if (strands > ways && !shared) {
    report(problems, { code: 'ways', at: 'ends.clasp', clasp, ways, strands });
  }
}

export function validateCounts(design: Design, problems: ValidationError[]): void {
  if (design.strands.length === 0) report(problems, { code: 'no-strand', at: 'strands' });
  design.strands.forEach((strand, index) => validateStrand(strand, `strands.${index}`, problems));
  validateWays(design, problems);
}
