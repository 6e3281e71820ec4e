/** The beads of a step, run by run, as a hand takes them up and a tick stands for each. */
import type { Group, GroupPart } from '#core/instructions/groups.ts';

/** Like components in a row, or one repeat of a motif, as far as the step goes. */
export type Run = {
  /** Numbers of its first and last component, 1 next to the clasp. */
  readonly first: number;
  readonly last: number;
  readonly section: string | null;
  readonly parts: readonly GroupPart[];
  /** Which repeat of its motif it is; null where nothing repeats. */
  readonly repeat: { readonly nth: number; readonly of: number } | null;
};

/** All runs of a strand, from the clasp on. */
function allRuns(groups: readonly Group[]): Run[] {
  return groups.flatMap(({ numbers, section, parts, repeats }) => {
    if (numbers === null) return [];
    const runs: Run[] = [];
    let next = numbers.first;
    for (let nth = 1; nth <= repeats; nth += 1) {
      // What repeats is taken up motif by motif, all else one kind after the other.
      const taken = repeats > 1 ? [parts] : parts.map((part) => [part]);
      for (const some of taken) {
        const first = next;
        next += some.reduce((sum, { count }) => sum + count, 0);
        const repeat = repeats > 1 ? { nth, of: repeats } : null;
        runs.push({ first, last: next - 1, section, parts: some, repeat });
      }
    }
    return runs;
  });
}

/** The runs from one bead's number to another's; a run that reaches beyond is cut there. */
export function runsBetween(groups: readonly Group[], first: number, last: number): Run[] {
  return allRuns(groups)
    .filter((run) => run.last >= first && run.first <= last)
    .map((run) => clipped(run, Math.max(first, run.first), Math.min(last, run.last)));
}

function clipped(run: Run, first: number, last: number): Run {
  if (first === run.first && last === run.last) return run;
  let at = run.first;
  const parts = run.parts.flatMap((part) => {
    const from = Math.max(first, at);
    at += part.count;
    const count = Math.min(last + 1, at) - from;
    return count > 0 ? [{ ...part, count }] : [];
  });
  return { ...run, first, last, parts };
}
