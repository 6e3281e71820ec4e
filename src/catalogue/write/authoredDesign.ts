/** A design as its file says it: the same fields that `build/design.ts` reads, those left out that mean the same unwritten. */
import type { Design, Section, Strand } from '#core/design/design.ts';
import { shortName } from '#core/design/shortName.ts';
import type { Plain, PlainMap } from './plain.ts';

/** A design that names its wire, as a file does, and holds no component. */
export type NamedDesign = Omit<Design, 'wire' | 'components'> & { readonly wire: string };

export const namedDesign = ({ components: _components, wire, ...rest }: Design): NamedDesign => ({
  ...rest,
  wire: wire.id,
});

const yesNo = (value: boolean): string => (value ? 'yes' : 'no');

/** Finer than anything that is measured. */
const DECIMALS = 4;
const mm = (value: number): string => `${Number(value.toFixed(DECIMALS))} mm`;

function beadsOf({ motif }: Section): Plain {
  const lines = motif.map(({ component, count }) => (count === 1 ? component : `${count} ${component}`));
  return lines.length === 1 ? lines[0]! : lines;
}

/** @param whole also what goes without saying */
function sectionOf(section: Section, whole: boolean): PlainMap {
  const { name, role, usual, fewest, most, cost } = section;
  const varies = fewest !== usual || most !== usual;
  return {
    name,
    ...((whole || role !== 'body') && { role }),
    beads: beadsOf(section),
    ...((whole || usual !== 1 || varies) && { usual }),
    ...((whole || varies) && { fewest, most }),
    ...(cost !== null && { cost }),
  };
}

/** What a strand is called that has no name yet: its id as words. */
const asWords = (id: string): string => {
  const words = id.replaceAll('-', ' ');
  return words.charAt(0).toUpperCase() + words.slice(1);
};

/** @param names what the file calls its strands */
function strandsOf(strands: readonly Strand[], names: readonly string[], whole: boolean): PlainMap[] {
  const known = new Set<string>();
  const nameOf = new Map(names.map((name) => [shortName(name, known), name]));
  const taken = new Set<string>();
  return strands.map(({ id, mirrored, sections }) => {
    const written = nameOf.get(id);
    // Of two alike one may be gone, and the other would be read under its short name.
    const kept = written !== undefined && shortName(written, new Set(taken)) === id;
    taken.add(id);
    return {
      name: kept ? written : asWords(id),
      ...((whole || !mirrored) && { mirrored: yesNo(mirrored) }),
      sections: sections.map((section) => sectionOf(section, whole)),
    };
  });
}

/**
 * The fields of a piece that its design is written in, in the order of the schema.
 * @param names what the file calls its strands, where it has several
 * @param whole also what goes without saying
 */
export function authoredDesign(design: NamedDesign, names: readonly string[], whole = false): PlainMap {
  const { kind, wire, ends, hanging, oneSided, upright, strands, lie, nestGapMm } = design;
  const [only, ...others] = strands;
  const several = others.length > 0;
  return {
    kind,
    wire,
    closing: {
      clasp: ends.clasp,
      ...(ends.ring !== null && { ring: ends.ring }),
      crimp: ends.crimp,
      ...(ends.cover !== null && { cover: ends.cover }),
      ...(ends.guard !== null && { guard: ends.guard }),
      loop: mm(ends.loopMm),
      ...(ends.extenderMm > 0 && { extender: mm(ends.extenderMm) }),
      ...(ends.linkMm !== undefined && { link: mm(ends.linkMm) }),
    },
    ...(hanging !== null && {
      pendant: { hangs: hanging.pendant, ...(hanging.rings.length > 0 && { rings: hanging.rings }) },
    }),
    ...((whole || oneSided) && { 'one-sided': yesNo(oneSided) }),
    ...(upright !== undefined && { upright: yesNo(upright) }),
    ...(only !== undefined &&
      !several && {
        ...((whole || !only.mirrored) && { mirrored: yesNo(only.mirrored) }),
        sections: only.sections.map((section) => sectionOf(section, whole)),
      }),
    ...(several && { strands: strandsOf(strands, names, whole), lie }),
    ...(several && nestGapMm > 0 && { gap: mm(nestGapMm) }),
  };
}
