/**
 * Sizes each choice of a copy of a piece once. Sizing is nearly all that taking
 * an order costs, and most buyers of a piece are of the same few sizes.
 */
import type { Choice } from '#core/design/choice.ts';
import type { Counts } from '#core/design/design.ts';
import { size } from '#core/sizing/size.ts';
import type { Candidate, Sizing } from '#core/sizing/sizing.ts';
import { describe } from '#core/sizing/usual.ts';
import type { Snapshot } from '../book/snapshot.ts';

/** Answers kept of one copy: wrists by the half centimetre, three ways to sit and two hands make about 90. */
const MOST_KEPT = 200;

/** As long as the copy itself is held, and no longer. */
function keptFor<T>(): (copy: Snapshot, key: string, compute: () => T) => T {
  const byCopy = new WeakMap<Snapshot, Map<string, T>>();
  return (copy, key, compute) => {
    const kept = byCopy.get(copy) ?? new Map<string, T>();
    byCopy.set(copy, kept);
    const answer = kept.get(key) ?? compute();
    // Put at the end again: the map's order is that of last use.
    kept.delete(key);
    kept.set(key, answer);
    const [oldest] = kept.keys();
    if (kept.size > MOST_KEPT && oldest !== undefined) kept.delete(oldest);
    return answer;
  };
}

const sizings = keptFor<Sizing>();
const described = keptFor<Candidate>();

/** What `size()` says of a choice. */
export function sizingOf(copy: Snapshot, choice: Choice): Sizing {
  return sizings(copy, JSON.stringify(choice), () =>
    size(copy.design, copy.rules, copy.listedMinor, choice, copy.listed),
  );
}

/** What `describe()` says of counts that the design allows. */
export function describedOf(copy: Snapshot, counts: Counts): Candidate {
  return described(copy, JSON.stringify(counts), () =>
    describe(copy.design, copy.rules, copy.listedMinor, counts, copy.listed),
  );
}
