/** What stands in the wire loop of an end. */
import { closesOnItself } from '../design/swap.ts';
import type { Design } from '../design/design.ts';

export type End = 'clasp' | 'ring';

export type Held = {
  /** `first-half`, `other-half`: a clasp that comes apart, one half an end. `chain`: an extender's last link alone. `nothing`: the clasp closes in the wire itself. */
  readonly what: 'whole' | 'first-half' | 'other-half' | 'chain' | 'nothing';
  /** null for a bare chain and for nothing. */
  readonly component: string | null;
  /** Eyes that it has, one a strand; 1 where all strands share one. */
  readonly ways: number;
};

/** What the wire is led round at one end of every strand. */
export function heldAt({ ends, components }: Design, end: End): Held {
  const clasp = components[ends.clasp];
  const inHalves = ends.ring === null && clasp !== undefined && closesOnItself(clasp);
  const held = (what: Held['what'], component: string | null): Held => ({
    what,
    component,
    ways: components[component ?? '']?.ways ?? 1,
  });
  if (end === 'clasp') return held(inHalves ? 'first-half' : 'whole', ends.clasp);
  if (ends.ring !== null) return held('whole', ends.ring);
  if (inHalves) return held('other-half', ends.clasp);
  return held(ends.extenderMm > 0 ? 'chain' : 'nothing', null);
}
