/** Random pieces, the same each run: any shapes and sizes in any order. */
import { CLASP_SHAPES, SHAPES, type Component } from '#core/design/component.ts';
import type { Design } from '#core/design/design.ts';
import { stream } from '#draw/paint/ink/seed.ts';
import { COMPONENTS, component, looks } from './components.ts';
import { design, section, strand } from './designs.ts';

/** Shapes of what is strung. */
const STRUNG = SHAPES.filter((shape) => shape !== 'ring' && !CLASP_SHAPES.some((one) => one === shape));
const CLASPS = ['lobster', 'spring', 'toggle', 'hook', 'magnet'] as const;

function pick<T>(from: readonly T[], random: () => number): T {
  const found = from[Math.floor(random() * from.length)];
  if (found === undefined) throw new RangeError('nothing to pick from');
  return found;
}

function randomComponent(id: string, random: () => number): Component {
  const shape = pick(STRUNG, random);
  const acrossMm = 2 + 10 * random();
  const alongMm = shape === 'ball' ? acrossMm : 1.5 + 14 * random();
  const most = Math.min(alongMm, acrossMm) / 2;
  return component(id, {
    shape,
    alongMm,
    acrossMm,
    roundingMm: shape === 'ball' ? most : most * random(),
    look: pick(Object.values(looks), random),
    kind: shape === 'cap' ? 'cap' : 'bead',
  });
}

/** A mirrored or a one-run piece of three to six kinds, some 150 to 600 mm long. */
export function randomDesign(seed: number): Design {
  const random = stream(seed);
  const kinds = Array.from({ length: 3 + Math.floor(random() * 4) }, (_, at) =>
    randomComponent(`r${seed}-${at}`, random),
  );
  const sections = kinds.map(({ id }, at) =>
    section(`s${at}`, [[id, 1 + Math.floor(random() * 3)]], 1 + Math.floor(random() * 5)),
  );
  return design(`random-${seed}`, {
    kind: random() < 0.5 ? 'necklace' : 'bracelet',
    strands: [strand('a', random() < 0.7, sections)],
    ends: {
      clasp: pick(CLASPS, random),
      ring: 'ring',
      crimp: 'crimp',
      cover: random() < 0.5 ? 'cover' : null,
      loopMm: 4,
      guard: null,
      extenderMm: 0,
    },
    components: { ...COMPONENTS, ...Object.fromEntries(kinds.map((one) => [one.id, one])) },
  });
}
