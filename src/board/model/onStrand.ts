/** What is done to the beads of one strand. Each answers with the strand's sections and where the hand is then. */
import { MOST_MOTIF_PARTS } from '#core/design/caps.ts';
import type { MotifPart, Section } from '#core/design/design.ts';
import { gathered } from './settle.ts';
import { isLoose, isWhole, type Place, type Span } from './place.ts';

export type Laid = { readonly sections: readonly Section[]; readonly span: Span | null };

/** Characters of a section's name in its file. */
export const LONGEST_NAME = 40;

/** A section of beads that stand once, under a name that no other has. */
export function looseSection(
  sections: readonly Section[],
  name: string,
  motif: readonly MotifPart[],
): Section {
  const names = new Set(sections.map((one) => one.name));
  let own = name;
  for (let number = 2; names.has(own); number += 1) own = `${name.slice(0, LONGEST_NAME - 4)} ${number}`;
  return { id: '', name: own, motif, usual: 1, fewest: 1, most: 1, role: 'body', cost: null };
}

const withMotif = (section: Section, motif: readonly MotifPart[]): Section => ({
  ...section,
  motif: gathered(motif),
});

/** Which run of a gathered motif a bead of the motif before is in, by how many beads stand before it. */
function partAfter(motif: readonly MotifPart[], beads: number): number {
  let before = 0;
  for (const [part, { count }] of motif.entries()) {
    before += count;
    if (beads <= before) return part;
  }
  return Math.max(0, motif.length - 1);
}

const beadsBefore = (motif: readonly MotifPart[], part: number): number =>
  motif.slice(0, part).reduce((sum, { count }) => sum + count, 0);

/** The section with more in it, and the hand on what was put. */
function putInside(sections: readonly Section[], { strand, section, part }: Place, more: MotifPart): Laid {
  const into = sections[section]!;
  const motif = [...into.motif.slice(0, part + 1), more, ...into.motif.slice(part + 1)];
  const changed = withMotif(into, motif);
  const at = partAfter(changed.motif, beadsBefore(motif, part + 2));
  return { sections: sections.with(section, changed), span: { strand, section, from: at, to: at } };
}

/** Beads after a place: into loose ones there, within a pattern that goes on behind it, else into loose ones of their own. */
export function put(sections: readonly Section[], after: Place, more: MotifPart, name: string): Laid {
  const { strand } = after;
  const isBeforeMiddle = after.section < 0 && sections[0]?.role === 'focal';
  const section = isBeforeMiddle ? 0 : Math.min(after.section, sections.length - 1);
  const at = { strand, section, part: isBeforeMiddle ? Infinity : after.part };
  const before = sections[at.section];
  const room = (section: Section | undefined): boolean =>
    section !== undefined && section.motif.length < MOST_MOTIF_PARTS;
  const last = (before?.motif.length ?? 0) - 1;
  if (before !== undefined && room(before) && (isLoose(before) || at.part < last)) {
    return putInside(sections, { ...at, part: Math.min(at.part, last) }, more);
  }
  const next = sections[at.section + 1];
  if (next !== undefined && isLoose(next) && room(next)) {
    return putInside(sections, { strand, section: at.section + 1, part: -1 }, more);
  }
  const begun = looseSection(sections, name, [more]);
  return {
    sections: sections.toSpliced(at.section + 1, 0, begun),
    span: { strand, section: at.section + 1, from: 0, to: 0 },
  };
}

/** Beads into the middle, beside what is there already. */
export function putMiddle(sections: readonly Section[], strand: number, more: MotifPart, name: string): Laid {
  const [first] = sections;
  if (first?.role === 'focal') {
    return putInside(sections, { strand, section: 0, part: first.motif.length - 1 }, more);
  }
  const middle: Section = { ...looseSection(sections, name, [more]), role: 'focal' };
  return { sections: [middle, ...sections], span: { strand, section: 0, from: 0, to: 0 } };
}

/** A section of one bead among the others, behind the middle at least. */
export function beginSection(
  sections: readonly Section[],
  at: {
    readonly strand: number;
    readonly section: number;
    readonly component: string;
    readonly name: string;
  },
): Laid {
  const least = sections[0]?.role === 'focal' ? 1 : 0;
  const section = Math.min(sections.length, Math.max(least, at.section));
  const begun = looseSection(sections, at.name, [{ component: at.component, count: 1 }]);
  return {
    sections: sections.toSpliced(section, 0, begun),
    span: { strand: at.strand, section, from: 0, to: 0 },
  };
}

export function setCount(sections: readonly Section[], at: Place, count: number): Laid {
  const section = sections[at.section];
  const part = section?.motif[at.part];
  if (section === undefined || part === undefined) return { sections, span: null };
  const changed = { ...section, motif: section.motif.with(at.part, { ...part, count }) };
  return { sections: sections.with(at.section, changed), span: null };
}

export function remove(sections: readonly Section[], span: Span): Laid {
  const section = sections[span.section];
  if (section === undefined) return { sections, span: null };
  const motif = section.motif.filter((_, part) => part < span.from || part > span.to);
  const { strand } = span;
  if (motif.length > 0) {
    const at = Math.max(0, span.from - 1);
    return {
      sections: sections.with(span.section, withMotif(section, motif)),
      span: { strand, section: span.section, from: at, to: at },
    };
  }
  const before = Math.max(0, span.section - 1);
  const last = Math.max(0, (sections[before]?.motif.length ?? 1) - 1);
  return {
    sections: sections.toSpliced(span.section, 1),
    span: { strand, section: before, from: last, to: last },
  };
}

export function replace(sections: readonly Section[], span: Span, component: string): Laid {
  const section = sections[span.section];
  if (section === undefined) return { sections, span: null };
  const motif = section.motif.map((part, at) =>
    at >= span.from && at <= span.to ? { ...part, component } : part,
  );
  const changed = withMotif(section, motif);
  const at = partAfter(changed.motif, beadsBefore(motif, span.from + 1));
  const { strand } = span;
  return {
    sections: sections.with(span.section, changed),
    span: { strand, section: span.section, from: at, to: at },
  };
}

/** A whole section changes places with its neighbour; the middle stays where it is. */
function moveSection(sections: readonly Section[], span: Span, by: 1 | -1): Laid {
  const section = sections[span.section]!;
  const other = sections[span.section + by];
  if (other === undefined || other.role === 'focal' || section.role === 'focal')
    return { sections, span: null };
  const moved = sections.with(span.section, other).with(span.section + by, section);
  return { sections: moved, span: { ...span, section: span.section + by } };
}

/** Runs one place on within their section; a whole section past its neighbour. */
export function move(sections: readonly Section[], span: Span, by: 1 | -1): Laid {
  const section = sections[span.section];
  if (section === undefined) return { sections, span: null };
  if (isWhole(section, span)) return moveSection(sections, span, by);
  const passed = by > 0 ? span.to + 1 : span.from - 1;
  const over = section.motif[passed];
  if (over === undefined) return { sections, span: null };
  const own = section.motif.slice(span.from, span.to + 1);
  const rest = section.motif.toSpliced(span.from, own.length);
  const from = span.from + by;
  // Not gathered yet: passing the same bead would leave the hand on another run.
  const motif = rest.toSpliced(from, 0, ...own);
  const changed = withMotif(section, motif);
  const first = partAfter(changed.motif, beadsBefore(motif, from) + 1);
  const last = partAfter(changed.motif, beadsBefore(motif, from + own.length));
  return { sections: sections.with(span.section, changed), span: { ...span, from: first, to: last } };
}
