/** What holds of every design on the board, whatever was done to it: it can be written to its file and read again as it is. */
import * as caps from '#core/design/caps.ts';
import type { Design, MotifPart, Section, Strand } from '#core/design/design.ts';
import { shortName, takenInStrand } from '#core/design/shortName.ts';
import type { Trays } from './action.ts';

/** As many as a section of a file may have. */
export const MOST_REPEATS = Math.min(caps.MOST_REPEATS, 999);

const within = (value: number, least: number, most: number): number =>
  Math.min(most, Math.max(least, Math.round(Number.isFinite(value) ? value : least)));

/** Runs of the same beside each other are one; none is longer than a file can say. */
export function gathered(motif: readonly MotifPart[]): MotifPart[] {
  const runs: MotifPart[] = [];
  for (const { component, count } of motif) {
    const last = runs.at(-1);
    const more = within(count, 1, caps.MOST_IN_ROW);
    if (last?.component === component && last.count + more <= caps.MOST_IN_ROW) {
      runs[runs.length - 1] = { component, count: last.count + more };
    } else runs.push({ component, count: more });
  }
  return runs;
}

/** Fewest, usual and most in order, the usual count leading; a focal stands once. */
function settledSection(section: Section, index: number, mirrored: boolean): Section {
  const isFocal = section.role === 'focal' && mirrored && index === 0;
  const usual = isFocal ? 1 : within(section.usual, 0, MOST_REPEATS);
  const fewest = isFocal ? 1 : Math.min(usual, within(section.fewest, 0, MOST_REPEATS));
  const most = isFocal ? 1 : Math.max(usual, within(section.most, 0, MOST_REPEATS));
  const role = section.role === 'focal' && !isFocal ? 'body' : section.role;
  const motif = section.motif.map((part) => ({ ...part, count: within(part.count, 1, caps.MOST_IN_ROW) }));
  return { ...section, motif, role, usual, fewest, most };
}

function settledStrand(strand: Strand): Strand {
  const taken = takenInStrand();
  const filled = strand.sections.filter(({ motif }) => motif.length > 0).slice(0, caps.MOST_SECTIONS);
  const sections = filled.map((section, index) => {
    const settled = settledSection(section, index, strand.mirrored);
    return { ...settled, id: shortName(section.name, taken) };
  });
  return { ...strand, sections };
}

/** Ids of every component that a design names. */
export function namedIn({ strands, ends, hanging }: Design): string[] {
  const strung = strands.flatMap(({ sections }) =>
    sections.flatMap(({ motif }) => motif.map(({ component }) => component)),
  );
  const { clasp, ring, crimp, cover, guard } = ends;
  const hung = hanging === null ? [] : [hanging.pendant, ...hanging.rings];
  const closing = [clasp, ring, crimp, cover, guard].filter((id) => id !== null);
  return [...new Set([...strung, ...closing, ...hung])].sort();
}

/** The design as it would be read from its file, with the components it names out of the trays. */
export function settled(design: Design, { components }: Pick<Trays, 'components'>): Design {
  const several = design.strands.length > 1;
  const strands = design.strands.map((strand) => {
    const one = settledStrand(strand);
    // A file gives a single strand no name of its own.
    return several ? one : { ...one, id: 'strand' };
  });
  const lie = several ? (design.lie === 'single' ? 'side-by-side' : design.lie) : 'single';
  const own = namedIn({ ...design, strands }).flatMap((id) => {
    const component = components[id] ?? design.components[id];
    return component === undefined ? [] : [[id, component] as const];
  });
  const nestGapMm = several ? design.nestGapMm : 0;
  return { ...design, strands, lie, nestGapMm, components: Object.fromEntries(own) };
}
