/** What a piece costs to make. Integer minor units throughout; fractions of one are kept as whole parts. */
import { tally, tallyFindings, tallyStrand } from '../../design/tally.ts';
import { cutLength } from '../../design/ends/cut.ts';
import type { Rules } from '../../design/rules.ts';
import type { Counts, Design } from '../../design/design.ts';
import { minutesOf } from './minutes.ts';
import { over } from './whole.ts';

/** Every figure a whole number of minor units; each rounded up on its own for show. */
export type Costs = {
  readonly beadsMinor: number;
  readonly findingsMinor: number;
  readonly wireMinor: number;
  readonly packingMinor: number;
  readonly labourMinor: number;
  readonly minutes: number;
};

/** Costs of the components in a tally, thousandths of a minor unit: a cost that is tried out (a fifth more) needn't be whole. */
function tallyMilli(design: Design, counts: ReadonlyMap<string, number>): number {
  let sum = 0;
  for (const [id, count] of counts) {
    sum += count * Math.round(1000 * (design.components[id]?.costMinor ?? 0));
  }
  return sum;
}

/** Length of a strand's beads laid straight, mm. */
export function beadsMm(design: Design, strand: number, counts: Counts): number {
  const found = design.strands[strand];
  if (found === undefined) return 0;
  let sum = 0;
  for (const [id, count] of tallyStrand(found, counts[strand] ?? [])) {
    sum += count * (design.components[id]?.alongMm ?? 0);
  }
  return sum;
}

/** Wire of all strands, whole millimetres, each cut rounded up. Slack is left out: it is under a penny's worth. */
export function wireMm(design: Design, counts: Counts, rules: Rules): number {
  return design.strands.reduce((sum, _, index) => {
    const cut = cutLength(design, rules, beadsMm(design, index, counts), 0);
    // To the micrometre first, so that rounding noise adds no millimetre.
    return sum + Math.ceil(Math.round(cut.totalMm * 1000) / 1000);
  }, 0);
}

/** Wire in thousandths of a minor unit: a metre has a thousand millimetres. */
const wireMilli = (design: Design, counts: Counts, rules: Rules): number =>
  Math.round(wireMm(design, counts, rules) * design.wire.costMinorPerM);

/** Materials in thousandths of a minor unit: components and wire. */
export function materialsMilli(design: Design, counts: Counts, rules: Rules): number {
  return tallyMilli(design, tally(design, counts)) + wireMilli(design, counts, rules);
}

/** What a piece with these counts costs to make, part by part. */
export function costsOf(design: Design, counts: Counts, rules: Rules): Costs {
  const findingsMilli = tallyMilli(design, tallyFindings(design));
  const minutes = minutesOf(design, counts, rules);
  return {
    beadsMinor: over(tallyMilli(design, tally(design, counts)) - findingsMilli, 1000),
    findingsMinor: over(findingsMilli, 1000),
    wireMinor: over(wireMilli(design, counts, rules), 1000),
    packingMinor: rules.price.packingMinor,
    labourMinor: over(Math.round(minutes * 100) * rules.price.labourMinorPerHour, 6000),
    minutes,
  };
}
