/** Loose beads become a section that repeats, and the other way round. */
import { MOST_MOTIF_PARTS } from '#core/design/caps.ts';
import type { MotifPart, Section } from '#core/design/design.ts';
import { gathered } from './settle.ts';
import { isLoose, isWhole, type Span } from './place.ts';
import { LONGEST_NAME, looseSection, type Laid } from './onStrand.ts';

const same = (one: MotifPart | undefined, other: MotifPart | undefined): boolean =>
  one?.component === other?.component && one?.count === other?.count;

/** How often `motif` stands at the start of `runs`, one after the other. */
function timesAtStart(runs: readonly MotifPart[], motif: readonly MotifPart[]): number {
  let times = 0;
  const { length } = motif;
  while (length > 0 && motif.every((part, at) => same(part, runs[times * length + at]))) times += 1;
  return times;
}

/** The runs of a span as a section of their own, what lay before and behind it as loose beads. */
export function repeat(sections: readonly Section[], span: Span, name: string, times: number | null): Laid {
  const section = sections[span.section];
  if (section === undefined || section.role === 'focal') return { sections, span: null };
  if (!isLoose(section) && !isWhole(section, span)) return { sections, span: null };
  const motif = section.motif.slice(span.from, span.to + 1);
  const behind = section.motif.slice(span.to + 1);
  const more = timesAtStart(behind, motif);
  const before = section.motif.slice(0, span.from);
  const rest = behind.slice(more * motif.length);
  const others = sections.toSpliced(span.section, 1);
  const usual = times ?? section.usual * (1 + more);
  const repeated: Section = {
    ...looseSection(others, isWhole(section, span) ? section.name : name, motif),
    ...{ usual, fewest: Math.max(0, usual - 1), most: usual + 1 },
  };
  const named = [...others, repeated];
  // The longer of what is left keeps the name that it had.
  const pieces: Section[] = [];
  if (before.length > 0) pieces.push({ ...section, motif: before });
  pieces.push(repeated);
  if (rest.length > 0) {
    pieces.push(
      before.length > 0 ? looseSection([...named, section], section.name, rest) : { ...section, motif: rest },
    );
  }
  const at = span.section + (before.length > 0 ? 1 : 0);
  return {
    sections: sections.toSpliced(span.section, 1, ...pieces),
    span: { strand: span.strand, section: at, from: 0, to: motif.length - 1 },
  };
}

/** A section's beads written out as often as they stand; once where that would be more than a section can hold. */
export function loosen(sections: readonly Section[], strand: number, at: number): Laid {
  const section = sections[at];
  if (section === undefined || section.usual === 0) return { sections, span: null };
  const written = gathered(Array.from({ length: section.usual }, () => section.motif).flat());
  if (written.length > MOST_MOTIF_PARTS) return { sections, span: null };
  const loose: Section = { ...section, motif: written, usual: 1, fewest: 1, most: 1, role: 'body' };
  return {
    sections: sections.with(at, loose),
    span: { strand, section: at, from: 0, to: written.length - 1 },
  };
}

/** A section with other figures or another part to play; a new middle comes first and pushes the old one out. */
export function changeSection(
  sections: readonly Section[],
  strand: number,
  at: number,
  change: Partial<Section>,
): Laid {
  const section = sections[at];
  if (section === undefined) return { sections, span: null };
  const name = (change.name ?? section.name).trim().slice(0, LONGEST_NAME).trim() || section.name;
  const changed = { ...section, ...change, ...countsAfter(section, change), name };
  if (change.role !== 'focal' || at === 0) return { sections: sections.with(at, changed), span: null };
  const others = sections
    .toSpliced(at, 1)
    .map((one): Section => (one.role === 'focal' ? { ...one, role: 'body' } : one));
  const last = changed.motif.length - 1;
  return { sections: [changed, ...others], span: { strand, section: 0, from: 0, to: last } };
}

/** Fewest, usual and most as wanted, the others making room for the one that was set. */
function countsAfter(section: Section, change: Partial<Section>): Pick<Section, 'fewest' | 'usual' | 'most'> {
  const { fewest = section.fewest, usual = section.usual, most = section.most } = change;
  if (change.usual !== undefined) {
    return { fewest: Math.min(fewest, usual), usual, most: Math.max(most, usual) };
  }
  if (change.fewest !== undefined) {
    const up = Math.max(usual, fewest);
    return { fewest, usual: up, most: Math.max(most, up) };
  }
  const down = Math.min(usual, most);
  return { fewest: Math.min(fewest, down), usual: down, most };
}
