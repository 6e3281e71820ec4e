/** One strand's loop with one set of counts after another, always on the same arrays. */
import type { Outlines } from '../geometry/junction.ts';
import { loadLoop, newWorkspace, type Workspace } from '../geometry/workspace.ts';
import { layKinds, partsIn, type Stretch } from './stretches.ts';

export type StrungLoop = {
  /** Strings the loop with these counts, ready to be closed. */
  readonly string: (counts: readonly number[]) => Workspace;
  /** The kind of each of its parts and of the next, from the workspace's first part on. */
  readonly neighbours: (each: (index: number, kind: number, next: number) => void) => void;
};

export function strungLoop(outlines: Outlines, loop: readonly Stretch[]): StrungLoop {
  let kinds = new Int32Array(0);
  let work = newWorkspace(0);
  let strung = '';
  return {
    string: (counts) => {
      const key = counts.join();
      if (key === strung) return work;
      strung = key;
      const count = partsIn(loop, counts);
      if (count > kinds.length) {
        kinds = new Int32Array(2 * count);
        work = newWorkspace(2 * count);
      }
      layKinds(loop, counts, kinds);
      loadLoop(work, outlines, kinds, count);
      return work;
    },
    neighbours: (each) => {
      const { count, first } = work;
      for (let index = 0, at = first; index < count; index += 1) {
        const next = at + 1 === count ? 0 : at + 1;
        each(index, kinds[at]!, kinds[next]!);
        at = next;
      }
    },
  };
}
