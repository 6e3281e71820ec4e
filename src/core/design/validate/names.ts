/** Every component that a design names: it exists, and is of a kind that can stand there. */
import type { Design } from '../design.ts';
import type { ValidationError } from '../validationError.ts';
import type { ComponentKind } from '../component.ts';
import { report } from './shape.ts';

type Named = { readonly id: string; readonly at: string; readonly kinds: readonly ComponentKind[] };

/** What may be strung: a crimp too, for it is also used as a stopper or a tiny spacer. */
const STRUNG: readonly ComponentKind[] = ['bead', 'spacer', 'cap', 'ring', 'crimp'];

function namedByEnds({ ends }: Design): Named[] {
  const named: (Named | null)[] = [
    { id: ends.clasp, at: 'ends.clasp', kinds: ['clasp'] },
    ends.ring === null
      ? null
      : { id: ends.ring, at: 'ends.ring', kinds: ['ring', 'clasp', 'bead', 'spacer'] },
    { id: ends.crimp, at: 'ends.crimp', kinds: ['crimp'] },
    ends.cover === null ? null : { id: ends.cover, at: 'ends.cover', kinds: ['cover'] },
    ends.guard === null ? null : { id: ends.guard, at: 'ends.guard', kinds: ['spacer', 'cover', 'crimp'] },
  ];
  return named.filter((one) => one !== null);
}

function namedByHanging({ hanging }: Design): Named[] {
  if (hanging === null) return [];
  const rings = hanging.rings.map((id, index): Named => ({
    id,
    at: `hanging.rings.${index}`,
    kinds: ['ring'],
  }));
  return [{ id: hanging.pendant, at: 'hanging.pendant', kinds: ['pendant'] }, ...rings];
}

function namedByStrands({ strands }: Design): Named[] {
  return strands.flatMap((strand, s) =>
    strand.sections.flatMap((section, k) =>
      section.motif.map((part, p): Named => {
        return { id: part.component, at: `strands.${s}.sections.${k}.motif.${p}`, kinds: STRUNG };
      }),
    ),
  );
}

/** @returns true where every name is known, so that later checks may look each up. */
export function validateNames(design: Design, problems: ValidationError[]): boolean {
  let known = true;
  for (const { id, at, kinds } of [
    ...namedByStrands(design),
    ...namedByEnds(design),
    ...namedByHanging(design),
  ]) {
    const component = Object.hasOwn(design.components, id) ? design.components[id] : undefined;
    if (component === undefined) {
      known = false;
      report(problems, { code: 'unknown-component', at, component: id });
    } else if (!kinds.includes(component.kind)) {
      report(problems, { code: 'wrong-kind', at, component: id, kind: component.kind, kinds });
    }
  }
  return known;
}
