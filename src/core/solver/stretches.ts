/** A strand's loop as stretches that repeat, and what may stand beside what in it. */
import type { Part } from '../geometry/part.ts';
import { linksToFit } from '../design/chain.ts';
import type { Design, Section } from '../design/design.ts';
import { expand } from '../design/expand.ts';
import { claspEndParts, closingParts, linkPart, partOf, ringEndParts } from '../design/loopParts.ts';
import { runsOf } from '../design/runs.ts';

/** A stretch of the loop: kinds of outline, strung as often as a section counts, or once. */
export type Stretch = {
  readonly kinds: readonly number[];
  /** Place of the section that counts it, the links of a chain after all others; null for what stands once in every strand. */
  readonly section: number | null;
  /** Whether it stands in every strand within the limits; whether it stands there once at the most. */
  readonly sure: boolean;
  readonly once: boolean;
};

/** The fewest and the most that a section may count. */
export type Limits = (section: Section) => readonly [fewest: number, most: number];

/** A strand's loop as stretches, closed with the extender let out by each of `chainsMm`, or with as many of its links as are counted. Every kind stands in one stretch only. */
export function stretchesOf(
  design: Design,
  strand: number,
  chainsMm: readonly number[],
  limits: Limits,
): { readonly parts: readonly Part[]; readonly loops: readonly (readonly Stretch[])[] } {
  const found = design.strands[strand]!;
  const bare = expand({ ...design, strands: [found] }, [[]])[0]!;
  const parts: Part[] = [];
  // What takes no length isn't in the loop.
  const kindsOf = (list: readonly Part[]): number[] =>
    list.filter((part) => part.alongMm > 0).map((part) => parts.push(part) - 1);
  const once = (list: readonly Part[]): Stretch => ({
    kinds: kindsOf(list),
    section: null,
    sure: true,
    once: true,
  });
  const end = (side: string): Stretch => {
    const seen = bare.filter((at) => at.side === side && at.covered !== true);
    return once(seen.map(({ component }) => partOf(component)));
  };
  const strung = runsOf(found).map(({ section, motif }): Stretch => {
    const each = motif.flatMap((part) =>
      new Array<Part>(part.count).fill(partOf(design.components[part.component]!)),
    );
    const [fewest, most] = limits(found.sections[section]!);
    return { kinds: kindsOf(each), section, sure: fewest > 0, once: most <= 1 };
  });
  const open = [end('left'), ...strung, end('right')];
  const links = linksToFit(design);
  const counted = (): Stretch[] => [
    once(ringEndParts(design)),
    {
      kinds: kindsOf([linkPart(design.ends.linkMm!)]),
      section: found.sections.length,
      sure: false,
      once: links === 1,
    },
    once(claspEndParts(design)),
  ];
  const loops = chainsMm.map((chainMm) =>
    [...open, ...(links > 0 ? counted() : [once(closingParts(design, chainMm))])].filter(
      ({ kinds }) => kinds.length > 0,
    ),
  );
  return { parts, loops };
}

/** How often a stretch is strung. */
const timesOf = ({ section }: Stretch, counts: readonly number[]): number =>
  section === null ? 1 : counts[section]!;

/** Parts in the loop with these counts. */
export function partsIn(loop: readonly Stretch[], counts: readonly number[]): number {
  return loop.reduce((sum, stretch) => sum + stretch.kinds.length * timesOf(stretch, counts), 0);
}

/** Length of the loop laid straight, mm. */
export function lengthIn(
  loop: readonly Stretch[],
  parts: readonly Part[],
  counts: readonly number[],
): number {
  return loop.reduce((sum, stretch) => {
    const each = stretch.kinds.reduce((mm, kind) => mm + parts[kind]!.alongMm, 0);
    return sum + timesOf(stretch, counts) * each;
  }, 0);
}

/** Writes the kinds of the loop's parts in their order; there must be room for `partsIn` of them. */
export function layKinds(loop: readonly Stretch[], counts: readonly number[], into: Int32Array): void {
  let at = 0;
  for (const stretch of loop) {
    const { kinds } = stretch;
    for (let left = timesOf(stretch, counts); left > 0; left -= 1) {
      for (let kind = 0; kind < kinds.length; kind += 1) into[at++] = kinds[kind]!;
    }
  }
}

/**
 * For every kind, the runs of kinds that may come after it: in a loop of any
 * counts one of them does, whole. Each ends with a stretch's end.
 */
export function runsAfter(loop: readonly Stretch[], kinds: number): number[][][] {
  const runs: number[][][] = Array.from({ length: kinds }, () => []);
  loop.forEach(({ kinds: own, once }, at) => {
    const next: (readonly number[])[] = once ? [] : [own];
    for (let step = 1; step <= loop.length; step += 1) {
      const other = loop[(at + step) % loop.length]!;
      next.push(other.kinds);
      if (other.sure) break;
    }
    own.forEach((kind, place) => {
      for (const run of next) runs[kind]!.push([...own.slice(place + 1), ...run]);
    });
  });
  return runs;
}

/** The loop the other way round. */
export function reversed(loop: readonly Stretch[]): Stretch[] {
  return loop.toReversed().map((stretch) => ({ ...stretch, kinds: stretch.kinds.toReversed() }));
}
