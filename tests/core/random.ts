/** Random numbers with a seed, and random small designs made of them. */
import type { Component } from '#core/design/component.ts';
import type { Design, PieceKind, Section } from '#core/design/design.ts';
import { component, design, section, strand } from './designs.ts';

export type Random = {
  /** From 0 to below 1. */
  readonly next: () => number;
  /** Whole, from `least` to `most`. */
  readonly whole: (least: number, most: number) => number;
  readonly pick: <T>(from: readonly T[]) => T;
};

/** mulberry32, a public-domain generator: good enough to make designs of, and the same everywhere. */
export function random(seed: number): Random {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
  const whole = (least: number, most: number): number => least + Math.floor(next() * (most - least + 1));
  return { next, whole, pick: (from) => from[whole(0, from.length - 1)]! };
}

/** A bead as one meets them: a ball, a tube, a disc, a rounded barrel; measures in tenths of a millimetre. */
export function randomBead(of: Random, id: string): Component {
  const along = of.whole(15, 120) / 10;
  const shape = of.next();
  if (shape < 0.5) return component(id, { alongMm: along });
  if (shape < 0.7) return component(id, { alongMm: along, acrossMm: of.whole(20, 80) / 10, roundingMm: 0 });
  if (shape < 0.85)
    return component(id, { alongMm: of.whole(8, 25) / 10, acrossMm: of.whole(40, 90) / 10, roundingMm: 0 });
  const across = of.whole(30, 120) / 10;
  return component(id, { alongMm: along, acrossMm: across, roundingMm: Math.min(along, across) / 4 });
}

/** Lengths of links, mm, of which a chain takes one by its own length; null: not known. */
const LINKS_MM = [null, 2.5, 4, null, 7];

/** The design with a chain, of two in five nobody knows the links. */
export function chained(design: Design, chainMm: number): Design {
  const linkMm = LINKS_MM[chainMm % LINKS_MM.length]!;
  if (linkMm === null) return { ...design, ends: { ...design.ends, extenderMm: chainMm } };
  const extenderMm = Math.floor(chainMm / linkMm) * linkMm;
  return { ...design, ends: { ...design.ends, extenderMm, linkMm } };
}

export type Size = { readonly sections: number; readonly repeats: number };

/** A random one-strand design with whatever a design may have. */
export function randomDesign(of: Random, kind: PieceKind, size: Size): Design {
  const beads = Array.from({ length: of.whole(2, 5) }, (_, at) => {
    const bead = randomBead(of, `bead${at}`);
    return of.next() < 0.15 ? { ...bead, stock: of.whole(4, 40) } : bead;
  });
  const mirrored = of.next() < 0.75;
  const sections: Section[] = [];
  if (mirrored && of.next() < 0.5) {
    const focal = component('focal', { alongMm: of.whole(80, 300) / 10, stock: null });
    beads.push(focal);
    sections.push(section('focal', [{ component: 'focal', count: 1 }], [1, 1, 1], 'focal'));
  }
  const changing = of.whole(1, size.sections);
  for (let at = 0; at < changing; at += 1) {
    const motif = Array.from({ length: of.whole(1, 3) }, () => ({
      component: of.pick(beads.filter((bead) => bead.id !== 'focal')).id,
      count: of.whole(1, 2),
    }));
    const fewest = of.whole(0, 3);
    const most = fewest + of.whole(0, size.repeats);
    const cost = of.next() < 0.3 ? of.whole(0, 4) : null;
    sections.push(section(`s${at}`, motif, [of.whole(fewest, most), fewest, most], 'body', cost));
  }
  const made = design(kind, [strand('only', sections, mirrored)], beads);
  return of.next() < 0.15 ? chained(made, of.whole(10, 50)) : made;
}

/** What is asked of wrists and of lengths at all, mm: beyond it a choice is refused whatever the piece. */
const SENSE_MM = { wrist: [80, 300], length: [200, 3000] } as const;

/**
 * A measure to ask of a piece, mm: `share` of the way from the least to the most
 * that it can be made for, a little beyond where that is below 0 or above 1, and
 * moved to where a choice makes sense.
 */
export function askedMm(
  of: keyof typeof SENSE_MM,
  { leastAskedMm, mostAskedMm }: { readonly leastAskedMm: number; readonly mostAskedMm: number },
  share: number,
): number {
  const [least, most] = SENSE_MM[of];
  const inSense = (mm: number): number => Math.min(most, Math.max(least, mm));
  const [from, to] = [inSense(leastAskedMm), inSense(mostAskedMm)];
  return inSense(from + share * (to - from));
}

/** Two or three strands on one clasp, side by side or (necklaces) nested, out of one stock; some with a chain. */
export function randomStrands(of: Random, kind: PieceKind, size: Size): Design {
  const one = randomDesign(of, kind, size);
  const many = of.whole(2, 3);
  const others = Array.from({ length: many - 1 }, (_, at) => {
    const other = randomDesign(of, kind, size);
    const named = (id: string): string => `${id}-${at}`;
    const own = Object.fromEntries(
      Object.values(other.components)
        .filter(({ id }) => id.startsWith('bead') || id === 'focal')
        .map((bead) => [named(bead.id), { ...bead, id: named(bead.id) }]),
    );
    // A bead in two is the first strand's, so that they draw on one stock.
    const mapped = (id: string): string => (id in one.components && of.next() < 0.3 ? id : named(id));
    const strands = other.strands.map((each) => ({
      ...each,
      id: `strand-${at}`,
      sections: each.sections.map((section) => ({
        ...section,
        motif: section.motif.map((part) => ({ ...part, component: mapped(part.component) })),
      })),
    }));
    return { own, strands };
  });
  return {
    ...one,
    lie: kind === 'necklace' && of.next() < 0.6 ? 'nested' : 'side-by-side',
    nestGapMm: of.whole(0, 12),
    strands: [...one.strands, ...others.flatMap(({ strands }) => strands)],
    components: Object.assign({}, one.components, ...others.map(({ own }) => own)) as Design['components'],
  };
}

/**
 * Two or three strands, side by side or nested, that draw on one to three counted
 * beads of which there are fewer than all of them could use. Small enough to write
 * every choice out.
 */
export function randomContested(of: Random): Design {
  const kind = of.pick(['necklace', 'necklace', 'bracelet'] as const);
  const many = of.whole(2, 3);
  const scarce = of.whole(1, 3);
  const beads = Array.from({ length: scarce + of.whole(0, 2) }, (_, at) => randomBead(of, `bead${at}`));
  const filler = component('filler', { alongMm: 4 });
  const lengthOf = (id: string): number => beads.find((bead) => bead.id === id)!.alongMm;
  const nested = kind === 'necklace' && of.next() < 0.5;
  const strands = Array.from({ length: many }, (_, at) => {
    const changing = of.whole(1, many === 2 ? 3 : 2);
    const sections = Array.from({ length: changing }, (__, place) => {
      const motif = Array.from({ length: of.whole(1, 2) }, () => ({
        component: of.pick(beads).id,
        count: 1,
      }));
      const fewest = of.whole(0, 2);
      const most = fewest + of.whole(1, many === 2 ? 5 : 4);
      return section(`s${place}`, motif, [of.whole(fewest, most), fewest, most]);
    });
    const mirrored = of.next() < 0.4;
    const sides = mirrored ? 2 : 1;
    const usualMm = sections.reduce((sum, { motif, usual }) => {
      return sum + sides * usual * motif.reduce((all, part) => all + lengthOf(part.component), 0);
    }, 0);
    // Filled up to about one length, so that the strands come to one size.
    const wholeMm = (kind === 'necklace' ? 420 : 190) + (nested ? 30 * at : 0);
    const kept = Math.max(1, Math.round((wholeMm - usualMm) / 4 / sides));
    const core = section('core', [{ component: 'filler', count: 1 }], [kept, kept, kept]);
    return strand(`strand${at}`, [core, ...sections], mirrored);
  });
  const uses = (end: 'fewest' | 'most', id: string): number =>
    strands.reduce((sum, { sections, mirrored }) => {
      const each = sections.map((one) => one[end] * one.motif.filter((part) => part.component === id).length);
      return sum + (mirrored ? 2 : 1) * each.reduce((all, count) => all + count, 0);
    }, 0);
  const counted = beads.map((bead, at) => {
    const [fewest, most] = [uses('fewest', bead.id), uses('most', bead.id)];
    return at < scarce ? { ...bead, stock: of.whole(fewest, Math.round((fewest + 2 * most) / 3)) } : bead;
  });
  const made = design(kind, strands, [...counted, filler], { lie: nested ? 'nested' : 'side-by-side' });
  return { ...made, nestGapMm: nested ? of.whole(0, 6) : 0 };
}
