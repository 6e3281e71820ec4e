/** From what the maker wrote to the core's design, before any component is looked up. */
import type { Alternatives } from '#core/design/alternatives.ts';
import type { Component, Wire } from '#core/design/component.ts';
import { wholeLinks } from '#core/design/chain.ts';
import type { Design, Ends, Section, Strand } from '#core/design/design.ts';
import { shortName, takenInStrand } from '#core/design/shortName.ts';
import { namedComponents } from './naming.ts';
import type { FieldPath } from '../read/problem.ts';
import type { AuthoredPiece, AuthoredSection } from '../schemas/piece.ts';

/** A strand as written, with where in the entry its sections stand. */
export type AuthoredStrand = {
  readonly name: string;
  readonly mirrored: boolean;
  readonly sections: readonly AuthoredSection[];
  readonly path: FieldPath;
};

/** The strands of a piece: one written in short, or several; null where neither or both are there. */
export function strandsOf(value: AuthoredPiece): readonly AuthoredStrand[] | null {
  if ((value.sections === undefined) === (value.strands === undefined)) return null;
  if (value.sections !== undefined) {
    return [
      { name: 'strand', mirrored: value.mirrored ?? true, sections: value.sections, path: ['sections'] },
    ];
  }
  return (value.strands ?? []).map((strand, index) => ({ ...strand, path: ['strands', index, 'sections'] }));
}

function sectionOf(written: AuthoredSection, taken: Set<string>): Section {
  const { usual } = written;
  return {
    id: shortName(written.name, taken),
    name: written.name,
    motif: written.beads,
    usual,
    fewest: written.fewest ?? usual,
    most: written.most ?? usual,
    role: written.role,
    cost: written.cost ?? null,
  };
}

function strandOf(written: AuthoredStrand, taken: Set<string>): Strand {
  const sections = takenInStrand();
  return {
    id: shortName(written.name, taken),
    mirrored: written.mirrored,
    sections: written.sections.map((section) => sectionOf(section, sections)),
  };
}

/** What may be chosen instead, out of `components`, which has all of it. */
export function buildAlternatives(
  { instead }: AuthoredPiece,
  components: Readonly<Record<string, Component>>,
): Alternatives {
  const part = (id: string): Component => components[id]!;
  return {
    clasps: (instead?.clasps ?? []).map(({ clasp, ring }) => ({
      clasp: part(clasp),
      ring: ring === undefined ? null : part(ring),
    })),
    pendants: (instead?.pendants ?? []).map(part),
  };
}

/** The chain in whole links, as many as its length holds; as written where it holds none, which is told elsewhere. */
function chainOf({ extender = 0, link }: AuthoredPiece['closing']): Pick<Ends, 'extenderMm' | 'linkMm'> {
  if (link === undefined) return { extenderMm: extender };
  const links = wholeLinks(extender, link);
  return { extenderMm: links > 0 ? links * link : extender, linkMm: link };
}

/** The design, with the components it names out of `components`. */
export function buildDesign(
  id: string,
  value: AuthoredPiece,
  strands: readonly AuthoredStrand[],
  wire: Wire,
  components: Readonly<Record<string, Component>>,
): Design {
  const { closing, pendant } = value;
  const names = [...new Set(namedComponents(value).map((named) => named.id))].sort();
  const taken = new Set<string>();
  return {
    id,
    kind: value.kind,
    strands: strands.map((strand) => strandOf(strand, taken)),
    lie: strands.length === 1 ? 'single' : (value.lie ?? 'side-by-side'),
    nestGapMm: value.gap ?? 0,
    ends: {
      clasp: closing.clasp,
      ring: closing.ring ?? null,
      crimp: closing.crimp,
      cover: closing.cover ?? null,
      loopMm: closing.loop,
      guard: closing.guard ?? null,
      ...chainOf(closing),
    },
    hanging: pendant === undefined ? null : { pendant: pendant.hangs, rings: pendant.rings ?? [] },
    oneSided: value['one-sided'],
    // Left out where she says nothing, so that such pieces keep their mark.
    ...(value.upright !== undefined && { upright: value.upright }),
    wire,
    components: Object.fromEntries(
      names.flatMap((name) => {
        const component = components[name];
        return component === undefined ? [] : [[name, component] as const];
      }),
    ),
  };
}
