/** What would bring a piece to a size that it can't be brought to as it is. */
import { linksToFit } from '../design/chain.ts';
import type { Counts, Design, Section } from '../design/design.ts';
import type { Rules } from '../design/rules.ts';
import { tally } from '../design/tally.ts';
import type { Measure as StrandMeasure } from '../solver/measure.ts';
import { measureOf } from '../solver/measureOf.ts';
import { offNm, toHundredths, toMm, toNm } from '../solver/outcome.ts';
import { jobOf, type Job } from './job.ts';
import { planPiece, strandTargets, type PiecePlan, type Plan } from './plan.ts';
import type { Help } from './sizing.ts';

/** More of one component a side than this would be another piece, not this one mended. */
const MOST_ADDED = 4;
/** Repeats beyond the maker's range that are worth asking her for. */
const MOST_WIDENED = 3;
/** More suggestions than these of one sort help nobody. */
const MOST_TOLD = 2;

/** One strand that doesn't come within tolerance of what it should be. */
type Shortfall = {
  readonly strand: number;
  readonly targetMm: number;
  /** The nearest piece in which it is below its target; null where it never is. */
  readonly below: PiecePlan | null;
  /** The nearest in which it is above. */
  readonly above: PiecePlan | null;
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

/** Whether the stock holds a piece with these counts, and so many more of one component beside them. */
function inStock({ design, pieces }: Job, counts: Counts, component = '', more = 0): boolean {
  return [...tally(design, counts)].every(([id, count]) => {
    const { stock } = design.components[id]!;
    return stock === null || (count + (id === component ? more : 0)) * pieces <= stock;
  });
}

/** How far a strand with these counts is off its target, mm, closed in the link that comes nearest. */
function nearestOffMm(
  { design }: Job,
  measure: StrandMeasure,
  counts: readonly number[],
  targetMm: number,
): number {
  const links = linksToFit(design);
  const ways = links > 0 ? Array.from({ length: links + 1 }, (_, link) => [...counts, link]) : [counts];
  return ways
    .map((way) => toMm(offNm(measure.of(way), toNm(targetMm))))
    .reduce((best, off) => (Math.abs(off) < Math.abs(best) ? off : best));
}

function addComponents(job: Job, { strand, below, targetMm }: Shortfall): Help[] {
  if (below === null) return [];
  const sides = job.design.strands[strand]!.mirrored ? 2 : 1;
  const found = strandBeads(job.design, strand).flatMap((component) => {
    const measure = measureOf(withSection(job.design, strand, component), strand, job.fitted);
    for (let count = 1; count <= MOST_ADDED; count += 1) {
      const offMm = nearestOffMm(job, measure, [...below.counts[strand]!, count], targetMm);
      if (within(job, offMm) && inStock(job, below.counts, component, sides * count)) {
        return [{ code: 'add-component', strand, component, count, sides, offMm } as const];
      }
    }
    return [];
  });
  return found.sort(nearestFirst).slice(0, MOST_TOLD);
}

function widenSections(job: Job, { strand, below, above, targetMm }: Shortfall): Help[] {
  const { sections } = job.design.strands[strand]!;
  const measure = measureOf(job.design, strand, job.fitted);
  const found = sections.flatMap(({ id, role, fewest, most }, index) => {
    if (role === 'focal') return [];
    const tries = Array.from({ length: MOST_WIDENED }, (_, step) => [step + 1, -step - 1]).flat();
    for (const repeats of tries) {
      const base = repeats > 0 ? below : above;
      const count = repeats > 0 ? most + repeats : fewest + repeats;
      if (base === null || count < 0) continue;
      const counts = base.counts[strand]!.with(index, count);
      const offMm = nearestOffMm(job, measure, counts, targetMm);
      if (within(job, offMm) && inStock(job, base.counts.with(strand, counts))) {
        return [{ code: 'widen-section' as const, strand, section: id, repeats, offMm }];
      }
    }
    return [];
  });
  return found.sort(nearestFirst).slice(0, MOST_TOLD);
}

/** The design with nothing counted. */
function uncounted(design: Design): Design {
  const all = Object.entries(design.components).map(([id, one]) => [id, { ...one, stock: null }]);
  return { ...design, components: Object.fromEntries(all) as Design['components'] };
}

/** What is wanting of every counted component where more of them is all it takes. */
function moreStock(job: Job, rules: Rules, targetMm: number): Help[] {
  const { design, pieces } = job;
  if (Object.values(design.components).every(({ stock }) => stock === null)) return [];
  const plan = planPiece(jobOf(uncounted(design), rules, pieces), targetMm);
  if (plan?.status !== 'fits') return [];
  return [...tally(design, plan.best.counts)].flatMap(([component, count]): Help[] => {
    const wanting = count * pieces - (design.components[component]!.stock ?? Infinity);
    return wanting > 0 ? [{ code: 'more-stock', component, count: wanting }] : [];
  });
}

/** The first strand that isn't within tolerance, and the pieces either side of its target. */
function shortfallOf(job: Job, plan: Exclude<Plan, { status: 'fits' }>, targetMm: number): Shortfall {
  const strand = plan.best.outcomes.findIndex(({ excess }) => excess > 0);
  const [below, above] =
    plan.status === 'near'
      ? [plan.below, plan.above]
      : plan.side === 'above'
        ? [plan.best, null]
        : [null, plan.best];
  return { strand, targetMm: strandTargets(job, targetMm)[strand]!, below, above };
}

/**
 * Small changes to the stock, the design or the maker's range that would meet
 * the target, likeliest first; empty where none so small would.
 * @throws SearchLimit
 */
export function whatHelps(job: Job, rules: Rules, plan: Plan, targetMm: number): Help[] {
  if (plan.status === 'fits') return [];
  const short = shortfallOf(job, plan, targetMm);
  return [...moreStock(job, rules, targetMm), ...addComponents(job, short), ...widenSections(job, short)];
}
