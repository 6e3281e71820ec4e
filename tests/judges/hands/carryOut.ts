/** A card carried out from its first step to its last, and held against the sizing. */
import type { Hand } from '#core/design/choice.ts';
import type { Design } from '#core/design/design.ts';
import type { Rules } from '#core/design/rules.ts';
import type { Step } from '#core/instructions/step.ts';
import type { Stringing } from '#core/instructions/stringing.ts';
import type { Candidate } from '#core/sizing/sizing.ts';
import { Cannot } from './cannot.ts';
import { hangs, wanted, wantedSide } from './hanging.ts';
import { Maker } from './maker.ts';

export type Work = {
  readonly design: Design;
  readonly rules: Rules;
  readonly candidate: Candidate;
  readonly hand: Hand;
  readonly card: Stringing;
};

/** What went wrong, with the step it went wrong at; null where the piece hangs there as it was sized. */
export function carryOut(
  { design, rules, candidate, hand, card }: Work,
  steps: readonly Step[] = card.steps,
): string | null {
  const maker = new Maker(
    design,
    card.strands.map(({ rows }) => rows),
    rules.wire.gripMm,
    candidate.chainUsedMm,
  );
  let at = 'before the first step';
  try {
    for (const step of steps) {
      at = `${step.code} ${JSON.stringify(step.args)}, strand ${step.strand ?? 'all'}`;
      maker.do(step);
    }
    at = 'after the last step';
    maker.finish();
  } catch (error) {
    if (error instanceof Cannot) return `${at}: ${error.message}`;
    throw error;
  }
  const got = JSON.stringify(hangs(maker));
  const should = JSON.stringify(wanted(design, candidate));
  if (got !== should) return `hangs ${got}, should ${should}`;
  const side = wantedSide(design, candidate, hand);
  return maker.laid?.claspSide === side
    ? null
    : `lies ${maker.laid?.claspSide ?? 'nowhere'}, should ${side ?? 'either way'}`;
}
