/** What would bring a piece to a size that it can't be brought to as it is. */
import { searchOf } from '../solver/search.ts';
import { offNm, toHundredths, toMm, toNm, type Outcome } from '../solver/outcome.ts';
import type { Design, Section } from '../design/design.ts';
import { measureOf, type Job, type StrandJob } from './job.ts';
import type { Help } from './sizing.ts';

/** More of one component a side than this would be another piece, not this one mended. */
const MOST_ADDED = 4;
/** Repeats beyond the maker's range that are worth asking her for. */
const MOST_WIDENED = 3;
/** More suggestions than these of one sort help nobody. */
const MOST_TOLD = 2;

/** One strand that doesn't come within tolerance of what it should be. */
export type Shortfall = {
  readonly strand: number;
  readonly job: StrandJob;
  readonly targetMm: number;
  /** The largest piece not above the target; null where even the smallest is. */
  readonly below: Outcome | null;
  /** The smallest not below it. */
  readonly above: Outcome | null;
};

const nearestFirst = (one: { offMm: number }, other: { offMm: number }): number =>
  Math.abs(one.offMm) - Math.abs(other.offMm);

function within(job: Job, offMm: number): boolean {
  return toHundredths(Math.abs(toNm(offMm))) <= toHundredths(toNm(job.toleranceMm));
}

/** Beads and spacers that this strand is made of, but for its focal, of which another beside the clasp would be another piece. */
function strandBeads(design: Design, strand: number): string[] {
  const ids = new Set(
    design.strands[strand]!.sections.filter(({ role }) => role !== 'focal').flatMap((section) =>
      section.motif.map((part) => part.component),
    ),
  );
  return [...ids].filter((id) => ['bead', 'spacer'].includes(design.components[id]!.kind));
}

/** The design with one more section next to the clasp, of one component only. */
function withSection(design: Design, strand: number, component: string): Design {
  const added: Section = {
    id: '',
    name: '',
    motif: [{ component, count: 1 }],
    usual: 0,
    fewest: 0,
    most: MOST_ADDED,
    role: 'filler',
    cost: null,
  };
  const found = design.strands[strand]!;
  const longer = { ...found, sections: [...found.sections, added] };
  return { ...design, strands: design.strands.with(strand, longer) };
}

function addComponents(job: Job, short: Shortfall): Help[] {
  const { strand, below, targetMm } = short;
  if (below === null) return [];
  const sides = job.design.strands[strand]!.mirrored ? 2 : 1;
  const found = strandBeads(job.design, strand).flatMap((component) => {
    const measure = measureOf(withSection(job.design, strand, component), strand, job.fitted);
    for (let count = 1; count <= MOST_ADDED; count += 1) {
      const offMm = toMm(offNm(measure.of([...below.counts, count]), toNm(targetMm)));
      if (within(job, offMm)) {
        return [{ code: 'add-component', strand, component, count, sides, offMm } as const];
      }
    }
    return [];
  });
  return found.sort(nearestFirst).slice(0, MOST_TOLD);
}

function widenSections(job: Job, short: Shortfall): Help[] {
  const { strand, targetMm } = short;
  const { problem, measure } = short.job;
  const found = problem.sections.flatMap((section, index) => {
    const kept = job.design.strands[strand]!.sections[index]!.role === 'focal';
    if (kept) return [];
    const tries = Array.from({ length: MOST_WIDENED }, (_, step) => [step + 1, -step - 1]).flat();
    for (const repeats of tries) {
      const base = repeats > 0 ? short.below : short.above;
      const count = repeats > 0 ? section.most + repeats : section.fewest + repeats;
      if (base === null || count < 0) continue;
      const span = measure.of(base.counts.with(index, count));
      const offMm = toMm(offNm(span, toNm(targetMm)));
      if (within(job, offMm)) {
        return [{ code: 'widen-section' as const, strand, section: section.id, repeats, offMm }];
      }
    }
    return [];
  });
  return found.sort(nearestFirst).slice(0, MOST_TOLD);
}

function moreStock(job: Job, short: Shortfall): Help[] {
  const { problem, measure } = short.job;
  const { targetMm } = short;
  if (problem.stock.length === 0) return [];
  const wanted = { targetNm: toNm(targetMm), toleranceNm: toNm(job.toleranceMm) };
  const best = searchOf({ ...problem, stock: [] }, measure).within(wanted);
  if (best === null) return [];
  return problem.stock.flatMap(({ component, left }, stock): Help[] => {
    const used = problem.sections.reduce(
      (sum, section, index) => sum + section.takes[stock]! * best.counts[index]!,
      0,
    );
    return used > left ? [{ code: 'more-stock', component, count: (used - left) * job.pieces }] : [];
  });
}

/**
 * Small changes to the design, the stock or the maker's range that would meet
 * the target, likeliest first; empty where none so small would.
 * @throws TooLarge
 */
export function whatHelps(job: Job, short: Shortfall): Help[] {
  return [...moreStock(job, short), ...addComponents(job, short), ...widenSections(job, short)];
}
