/** The counts behind a finished piece: what a maker has who has the piece and a ruler, but no plan. */
import { withoutLinks } from '../design/chain.ts';
import { validateDesign } from '../design/validate/validateDesign.ts';
import { explain, type Explanation, type CountEstimate } from '../solver/explain.ts';
import type { Limits } from '../solver/stretches.ts';
import type { Design, Section } from '../design/design.ts';
import { measureOf } from '../solver/measureOf.ts';
import { refuse, unlessSearchLimit } from './refused.ts';
import type { Refused } from './sizing.ts';
import type { Fitted } from '../design/choice.ts';

export type Measurement = {
  /** What was measured: the piece laid straight through its closing, or round its inside. */
  readonly of: Fitted;
  readonly mm: number;
  /** How far the measuring may be off, standard deviation, mm. */
  readonly sdMm: number;
  /** What was counted of each section of the strand; null where nothing was, so that the usual counts must serve. */
  readonly estimates: readonly CountEstimate[] | null;
};

export type Explained =
  { readonly status: 'explained'; readonly explanations: readonly Explanation[] } | Refused;

/** Counts taken at a glance are off by this share of them, but for a focal, which nobody miscounts (common practice, no source). */
const GLANCE_SHARE = 0.15;
/** Explanations told at the most. */
const MOST_EXPLANATIONS = 10;

/** A finished piece needn't keep to what the maker allows today. */
const anyCount: Limits = () => [0, Infinity];

function atAGlance(sections: readonly Section[]): CountEstimate[] {
  return sections.map(({ usual, role }) => ({
    count: usual,
    sd: role === 'focal' ? 0 : Math.max(1, GLANCE_SHARE * usual),
  }));
}

function sound(found: Measurement, sections: number): boolean {
  const { mm, sdMm, estimates } = found;
  if (!(mm > 0 && Number.isFinite(mm) && sdMm >= 0 && Number.isFinite(sdMm))) return false;
  if (estimates === null) return true;
  return (
    estimates.length === sections &&
    estimates.every(
      ({ count, sd }) => Number.isInteger(count) && count >= 0 && count <= 1000 && sd >= 0 && sd <= 100,
    )
  );
}

/**
 * Counts that explain a measured piece, the likeliest first, each with its
 * share of the likelihood. Nothing is thrown.
 * @param design the kinds of component and their motifs; its counts serve only where none were taken.
 */
export function explainPiece(design: Design, strand: number, found: Measurement): Explained {
  const problems = validateDesign(design);
  if (problems.length > 0) return refuse({ code: 'design', problems });
  const sections = design.strands[strand]?.sections;
  if (sections === undefined || !sound(found, sections.length)) {
    return refuse({ code: 'measure-not-positive', mm: Number.isFinite(found.mm) ? found.mm : 0 });
  }
  const estimates = found.estimates ?? atAGlance(sections);
  const evidence = { measuredMm: found.mm, rulerSdMm: found.sdMm, estimates };
  // Nobody says in which link it was closed when it was measured, so any length of the chain may be in it.
  const measure = measureOf(withoutLinks(design), strand, found.of, anyCount);
  return unlessSearchLimit(() => ({
    status: 'explained',
    explanations: explain(measure, evidence, MOST_EXPLANATIONS),
  }));
}
