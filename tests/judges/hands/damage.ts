/** Steps damaged in one place: one left out, two changed about, a count, a length, a choice that is wrong. */
import type { Step } from '#core/instructions/step.ts';

export type Damage = {
  /** What was done to which step, e.g. `drop crimp`, `swap measure, check-pattern`, `more string-beads.last`. */
  readonly what: string;
  readonly steps: readonly Step[];
};

/** A slip in a length that hands would make, mm. */
const SLIP_MM = 3;

/** By how many places a step comes too early. */
const EARLIER = 4;

const other: Readonly<Record<string, string | null>> = {
  clasp: 'ring',
  ring: 'clasp',
  left: 'right',
  right: null,
};

/** The values that one argument could have been instead. */
function wrongValues(name: string, value: unknown): [string, unknown][] {
  if (typeof value === 'boolean') return [['not', !value]];
  if (typeof value === 'number') {
    const by = name.endsWith('Mm') ? SLIP_MM : 1;
    return [
      ['more', value + by],
      ['less', value - by],
    ];
  }
  return typeof value === 'string' && value in other ? [['other', other[value]]] : [];
}

function wrongArgs(steps: readonly Step[], at: number): Damage[] {
  const step = steps[at];
  if (step === undefined) return [];
  return Object.entries(step.args).flatMap(([name, value]) =>
    wrongValues(name, value).map(([how, wrong]) => ({
      what: `${how} ${step.code}.${name}`,
      steps: steps.with(at, { ...step, args: { ...step.args, [name]: wrong } } as Step),
    })),
  );
}

/** Every damage of one step, and of it with the next. */
export function damagesAt(steps: readonly Step[], at: number): Damage[] {
  const step = steps[at];
  const next = steps[at + 1];
  if (step === undefined) return [];
  const dropped = { what: `drop ${step.code}`, steps: steps.toSpliced(at, 1) };
  const twice = { what: `twice ${step.code}`, steps: steps.toSpliced(at, 0, step) };
  const swapped =
    next === undefined
      ? []
      : [{ what: `swap ${step.code}, ${next.code}`, steps: steps.with(at, next).with(at + 1, step) }];
  const early =
    at < EARLIER
      ? []
      : [{ what: `early ${step.code}`, steps: steps.toSpliced(at, 1).toSpliced(at - EARLIER, 0, step) }];
  return [dropped, twice, ...early, ...swapped, ...wrongArgs(steps, at)];
}
