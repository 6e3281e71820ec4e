/** One strand's loop with one set of counts after another, always on the same arrays. */
import { loadTaut, newTaut, type Outlines, type Taut } from '../geometry/taut.ts';
import { layKinds, partsIn, type Stretch } from './stretches.ts';

export type StrungLoop = {
  /** Strings the loop with these counts, ready to be closed. */
  readonly string: (counts: readonly number[]) => Taut;
  /** The kind of each of its parts and of the next, from the kernel's first part on. */
  readonly neighbours: (each: (index: number, kind: number, next: number) => void) => void;
};

export function strungLoop(outlines: Outlines, loop: readonly Stretch[]): StrungLoop {
  let kinds = new Int32Array(0);
  let taut = newTaut(0);
  let strung = '';
  return {
    string: (counts) => {
      const key = counts.join();
      if (key === strung) return taut;
      strung = key;
      const count = partsIn(loop, counts);
      if (count > kinds.length) {
        kinds = new Int32Array(2 * count);
        taut = newTaut(2 * count);
      }
      layKinds(loop, counts, kinds);
      loadTaut(taut, outlines, kinds, count);
      return taut;
    },
    neighbours: (each) => {
      const { count, first } = taut;
      for (let index = 0, at = first; index < count; index += 1) {
        const next = at + 1 === count ? 0 : at + 1;
        each(index, kinds[at]!, kinds[next]!);
        at = next;
      }
    },
  };
}
