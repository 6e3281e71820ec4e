/**
 * The loop of a strand and the costs of its sections, laid out from the design
 * by the verifier itself: it shares no line with `expand`, `loopParts` and the
 * costs that the search is given.
 */
import type { Part } from '../geometry/part.ts';
import type { Design, Strand } from '../design/design.ts';

/** One component of a strand: its id, its section, and the side it lies on. */
export type Strung = { readonly id: string; readonly section: string; readonly side: Side };
type Side = 'left' | 'centre' | 'right';

/** Components in stringing order, written out one by one. */
export function strungPlaces(strand: Strand, counts: readonly number[]): Strung[] {
  const half: Omit<Strung, 'side'>[] = [];
  const middle: Omit<Strung, 'side'>[] = [];
  strand.sections.forEach(({ id: section, role, motif }, index) => {
    for (let repeat = 0; repeat < (counts[index] ?? 0); repeat += 1) {
      for (const part of motif) {
        for (let copy = 0; copy < part.count; copy += 1) {
          (strand.mirrored && role === 'focal' ? middle : half).push({ id: part.component, section });
        }
      }
    }
  });
  const on = (all: readonly Omit<Strung, 'side'>[], side: Side): Strung[] =>
    all.map((one) => ({ ...one, side }));
  if (strand.mirrored)
    return [...on(half.toReversed(), 'left'), ...on(middle, 'centre'), ...on(half, 'right')];
  const left = Math.ceil(half.length / 2);
  return [...on(half.slice(0, left), 'left'), ...on(half.slice(left), 'right')];
}

/** Their ids alone. */
export function strung(strand: Strand, counts: readonly number[]): string[] {
  return strungPlaces(strand, counts).map(({ id }) => id);
}

/** A length of wire or chain with ends as round as it can have. */
function roundEnded(alongMm: number, acrossMm: number): Part {
  return { alongMm, acrossMm, roundingMm: alongMm < acrossMm ? alongMm / 2 : acrossMm / 2 };
}

/**
 * The chain in use, its links 2 mm across (a usual link, common practice, no
 * source): one after the other until it is as long. Where the length of a link
 * isn't known as many as the whole chain has of 3 mm, 100 at most, sharing the
 * length evenly.
 */
function links(design: Design, chainMm: number): Part[] {
  if (chainMm <= 0) return [];
  const { extenderMm, linkMm } = design.ends;
  let count = 1;
  if (linkMm === undefined) while (count < 100 && count * 3 < extenderMm) count += 1;
  else while ((count + 0.5) * linkMm < chainMm) count += 1;
  return new Array<Part>(count).fill(roundEnded(chainMm / count, 2));
}

/**
 * A strand closed: from the clasp end's crimp (or its cover, which hides it)
 * along the strung parts to the ring end's, then wire loop, ring, chain,
 * clasp, wire loop. In a loop the wire, or its guard, lies double.
 */
export function verifierParts(
  design: Design,
  strand: Strand,
  counts: readonly number[],
  chainMm: number,
): Part[] {
  const { crimp, cover, ring, clasp, guard, loopMm } = design.ends;
  const seen = (ids: readonly (string | null)[]): Part[] =>
    ids.flatMap((id) => {
      const component = id === null ? undefined : design.components[id];
      if (component === undefined) return [];
      const { alongMm, acrossMm, roundingMm } = component;
      return [{ alongMm, acrossMm, roundingMm }];
    });
  const end = cover ?? crimp;
  const guardMm = seen([guard])[0]?.acrossMm ?? 0;
  const wireLoop = roundEnded(
    loopMm,
    2 * (guardMm > design.wire.diameterMm ? guardMm : design.wire.diameterMm),
  );
  return [
    ...seen([end, ...strung(strand, counts), end]),
    wireLoop,
    ...seen([ring]),
    ...links(design, chainMm),
    ...seen([clasp]),
    wireLoop,
  ];
}

/**
 * What a change of counts costs: the maker's own cost of a section or, where
 * she names none, how many sections lie from it to the nearest clasp end,
 * itself counted, for every repeat more or less than usual.
 */
export function costOfCounts(strand: Strand, counts: readonly number[]): number {
  let total = 0;
  for (const [index, section] of strand.sections.entries()) {
    const toLast = strand.sections.slice(index).length;
    const toFirst = strand.sections.slice(0, index + 1).length;
    const place = !strand.mirrored && toFirst < toLast ? toFirst : toLast;
    const changed = Math.abs((counts[index] ?? 0) - section.usual);
    total += (section.cost ?? place) * changed;
  }
  return total;
}
