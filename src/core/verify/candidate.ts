/**
 * Checks one piece against its design. Counts, order, loop parts, lengths,
 * stock and changes are worked out anew, apart from the search; the inside girth is
 * found by relaxing, another way than the solver's. It says what is broken.
 */
import type { Candidate } from '../sizing/sizing.ts';
import { massOf } from '../design/mass/mass.ts';
import type { Design, Section, Strand } from '../design/design.ts';
import { girthByRelaxing } from './girth.ts';
import { strung, strungPlaces, verifierParts } from './parts.ts';
import { isPrice, type Priced } from './price.ts';

export type Fault = {
  readonly code:
    | 'counts'
    | 'sequence'
    | 'length'
    | 'girth'
    | 'loop'
    | 'fitted'
    | 'error'
    | 'tolerance'
    | 'changes'
    | 'mass'
    | 'price'
    | 'pick'
    | 'stock'
    | 'chain'
    | 'limits'
    | 'side'
    | 'better';
  readonly at: string;
};

/** Sums of some hundred lengths differ by less than this in any order, mm. */
export const CLOSE_MM = 1e-6;
/** How well the girth found by relaxing is known, mm. */
const GIRTH_MM = 1e-3;
export const near = (one: number, other: number, by = CLOSE_MM): boolean => Math.abs(one - other) <= by;

/** Fewest and most of a section; a focal keeps its usual count. */
export function boundsOf({ role, usual, fewest, most }: Section): readonly [fewest: number, most: number] {
  return role === 'focal' ? [usual, usual] : [fewest, most];
}

export function allowed(strand: Strand, counts: readonly number[] | undefined): boolean {
  return (
    counts?.length === strand.sections.length &&
    strand.sections.every((section, index) => {
      const count = counts[index] ?? -1;
      const [least, most] = boundsOf(section);
      return Number.isInteger(count) && count >= least && count <= most;
    })
  );
}

const alongOf = (design: Design, id: string | null): number =>
  id === null ? 0 : (design.components[id]?.alongMm ?? 0);

/** Finished length added up from the design: beads, crimps or their covers, loops, ring, clasp, chain. */
export function lengthOf(design: Design, ids: readonly string[], chainMm: number): number {
  const { crimp, cover, loopMm, ring, clasp } = design.ends;
  const beads = ids.reduce((sum, id) => sum + alongOf(design, id), 0);
  const closing = alongOf(design, clasp) + alongOf(design, ring) + chainMm;
  return beads + 2 * alongOf(design, cover ?? crimp) + 2 * loopMm + closing;
}

export function checkStock(design: Design, candidate: Pick<Candidate, 'counts'>, pieces: number): boolean {
  const used = new Map<string, number>();
  const use = (id: string | null): void => {
    if (id !== null) used.set(id, (used.get(id) ?? 0) + 1);
  };
  design.strands.forEach((strand, index) => {
    strung(strand, candidate.counts[index] ?? []).forEach(use);
    for (const id of [design.ends.crimp, design.ends.cover, design.ends.guard]) [id, id].forEach(use);
  });
  [design.ends.clasp, design.ends.ring, design.hanging?.pendant ?? null].forEach(use);
  design.hanging?.rings.forEach(use);
  return [...used].every(([id, count]) => count * pieces <= (design.components[id]?.stock ?? Infinity));
}

function checkChanges(design: Design, candidate: Candidate): boolean {
  const net = new Map<string, number>();
  const add = (id: string, count: number): void => {
    net.set(id, (net.get(id) ?? 0) + count);
  };
  design.strands.forEach((strand, index) => {
    strung(strand, candidate.counts[index] ?? []).forEach((id) => add(id, 1));
    strung(
      strand,
      strand.sections.map((section) => section.usual),
    ).forEach((id) => add(id, -1));
  });
  for (const change of candidate.changes) {
    const sections = design.strands[change.strand]?.sections ?? [];
    const at = sections.findIndex(({ id }) => id === change.section);
    if (sections[at]?.usual !== change.from || change.to === change.from) return false;
    if (candidate.counts[change.strand]?.[at] !== change.to) return false;
    for (const { component, count } of change.parts) add(component, -count);
  }
  return [...net.values()].every((count) => count === 0);
}

function sameSequence(design: Design, strand: Strand, candidate: Candidate, index: number): boolean {
  const sequence = candidate.sequences[index] ?? [];
  const { crimp, cover } = design.ends;
  const end = cover === null ? [crimp] : [crimp, cover];
  const wanted = [
    ...end.map((id) => ({ id, section: 'end', side: 'left' as const })),
    ...strungPlaces(strand, candidate.counts[index] ?? []),
    ...end.toReversed().map((id) => ({ id, section: 'end', side: 'right' as const })),
  ];
  return (
    sequence.length === wanted.length &&
    sequence.every(({ component, section, side, covered }, at) => {
      const place = wanted[at];
      const hidden = cover !== null && section === 'end' && component.id === crimp;
      return (
        component.id === place?.id &&
        section === place.section &&
        side === place.side &&
        (covered === true) === hidden
      );
    })
  );
}

/** Every component that is strung, closes or hangs, and the wire along the strands, weighed one by one, grams. */
function massG(design: Design, candidate: Candidate, lengthsMm: readonly number[]): number {
  const { ends, hanging, wire } = design;
  const perStrand = design.strands.flatMap((strand, index) => [
    ...strung(strand, candidate.counts[index] ?? []),
    ...[ends.crimp, ends.cover, ends.guard].flatMap((id) => [id, id]),
  ]);
  const once = [ends.clasp, ends.ring, hanging?.pendant ?? null, ...(hanging?.rings ?? [])];
  const componentsG = [...perStrand, ...once].reduce((sum, id) => {
    const component = id === null ? undefined : design.components[id];
    return component === undefined ? sum : sum + massOf(component).massG;
  }, 0);
  const wireMm = lengthsMm.reduce((sum, mm) => sum + mm, 0);
  return componentsG + (wire.massGPerM * wireMm) / 1000;
}

/** What is broken in one candidate, whatever it was sized for. @param priced null: its price isn't looked at */
export function verifyCandidate(
  design: Design,
  candidate: Candidate,
  pieces: number,
  priced: Priced | null = null,
): Fault[] {
  const faults: Fault[] = [];
  const hold = (right: boolean, code: Fault['code'], at = 'piece'): void => {
    if (!right) faults.push({ code, at });
  };
  const lengths: number[] = [];
  const girths: number[] = [];
  design.strands.forEach((strand, index) => {
    const at = `strands.${index}`;
    hold(allowed(strand, candidate.counts[index]), 'counts', at);
    hold(sameSequence(design, strand, candidate, index), 'sequence', at);
    lengths.push(lengthOf(design, strung(strand, candidate.counts[index] ?? []), candidate.chainUsedMm));
    const parts = verifierParts(design, strand, candidate.counts[index] ?? [], candidate.chainUsedMm);
    girths.push(girthByRelaxing(parts));
  });
  hold(near(candidate.finishedLengthMm, Math.max(...lengths)), 'length');
  const girthMm = Math.min(...girths);
  hold(candidate.insideGirthMm > 0 === girthMm > 0, 'loop');
  hold(near(candidate.insideGirthMm, girthMm, GIRTH_MM), 'girth');
  const byLength = design.kind === 'necklace';
  hold(
    near(candidate.fittedMm, (byLength ? lengths[0] : girthMm) ?? NaN, byLength ? CLOSE_MM : GIRTH_MM),
    'fitted',
  );
  const chainMm = design.strands.length === 1 ? Math.max(0, design.ends.extenderMm) : 0;
  hold(candidate.chainUsedMm >= 0 && candidate.chainUsedMm <= chainMm + CLOSE_MM, 'chain');
  // The clasp hooks into a link, and nowhere between two.
  const { linkMm = 0 } = design.ends;
  const beyondMm = linkMm > 0 ? candidate.chainUsedMm % linkMm : 0;
  hold(Math.min(beyondMm, linkMm - beyondMm) < CLOSE_MM || beyondMm === 0, 'chain');
  hold(near(candidate.massG, massG(design, candidate, lengths)), 'mass');
  if (priced !== null) hold(isPrice(design, candidate.counts, candidate.priceMinor, priced), 'price');
  hold(checkChanges(design, candidate), 'changes');
  hold(checkStock(design, candidate, pieces), 'stock');
  return faults;
}
