/** Cautions of the parts swapped in, gravest first: the page of the listed piece doesn't warn of them. */
import { gravestFirst, type Caution } from '#catalogue/facts/cautions.ts';
import type { Subject } from './subject.ts';

export function swappedCautions({ design, swaps }: Pick<Subject, 'design' | 'swaps'>): readonly Caution[] {
  return gravestFirst(
    swaps.flatMap(({ to }) => (to === null ? [] : (design.components[to]?.cautions ?? []))),
  );
}
