/** Work at the board as it is kept on the device: the design that it began with and every step since, both small. */
import type { Design } from '#core/design/design.ts';
import type { Action, Trays } from './action.ts';
import { now, replay, type History } from './history.ts';
import { reduce } from './reduce.ts';
import { settled } from './settle.ts';

type Compact = Omit<Design, 'wire' | 'components'> & { readonly wire: string };

export type Draft = {
  readonly version: 1;
  /** Digest of the file that was last read or saved; null for a piece without one. */
  readonly digest: string | null;
  readonly first: Compact;
  readonly steps: readonly (readonly Action[])[];
  readonly at: number;
  /** How many steps the file has. */
  readonly saved: number;
};

export type Work = {
  readonly history: History<Design, readonly Action[]>;
  readonly digest: string | null;
  readonly saved: number;
};

const compact = ({ wire, components: _components, ...design }: Design): Compact => ({
  ...design,
  wire: wire.id,
});

export function draftOf({ history, digest, saved }: Work): Draft {
  const { first, done, at } = history;
  return { version: 1, digest, first: compact(first), steps: done.map(({ step }) => step), at, saved };
}

const isDraft = (value: unknown): value is Draft =>
  typeof value === 'object' && value !== null && (value as Draft).version === 1;

/**
 * The work that a kept text stands for, its components fetched from the trays as they are now.
 * @returns null where the text is none of ours, or names a wire that is there no more
 */
export function workFrom(text: string, trays: Trays): Work | null {
  try {
    const draft: unknown = JSON.parse(text);
    if (!isDraft(draft)) return null;
    const wire = trays.wires[draft.first.wire];
    if (wire === undefined) return null;
    const first = settled({ ...draft.first, wire, components: {} }, trays);
    const next = (design: Design, step: readonly Action[]): Design =>
      step.reduce((laid, action) => reduce(laid, action, trays).design, design);
    return { history: replay(first, draft.steps, draft.at, next), digest: draft.digest, saved: draft.saved };
  } catch {
    // What another program wrote there may have any shape.
    return null;
  }
}

/** Whether the design differs from what its file holds. */
export function isUnsaved({ history, saved }: Work): boolean {
  const { first, done, at } = history;
  if (at === saved) return false;
  const kept = done[saved - 1]?.state ?? first;
  return JSON.stringify(compact(kept)) !== JSON.stringify(compact(now(history)));
}
