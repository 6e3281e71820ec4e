/** Random pieces with every closing and every way to hang something. */
import { withoutLinks } from '#core/design/chain.ts';
import { validateDesign } from '#core/design/validate/validateDesign.ts';
import type { Component, Joint, Shape } from '#core/design/component.ts';
import type { Hand, Measure } from '#core/design/choice.ts';
import type { Design, PieceKind } from '#core/design/design.ts';
import type { Rules } from '#core/design/rules.ts';
import { stringing } from '#core/instructions/stringing.ts';
import { size } from '#core/sizing/size.ts';
import { describe, usual } from '#core/sizing/usual.ts';
import { component, rules as plainRules } from '#tests/core/designs.ts';
import { chained, random, randomDesign, randomStrands, type Random } from '#tests/core/random.ts';
import type { Work } from './carryOut.ts';

const ONE_PIECE: readonly Shape[] = ['lobster', 'spring-ring'];
const TWO_HALVES: readonly Shape[] = ['toggle', 'hook', 'box', 'magnetic'];

/** The design closed in any way at all. */
function closedAnyhow(of: Random, design: Design): Design {
  const shape = of.pick([...ONE_PIECE, ...TWO_HALVES]);
  const clasp = component('clasp', {
    ...{ kind: 'clasp', shape, alongMm: of.whole(5, 22), acrossMm: 7, roundingMm: 0, holeMm: 0 },
    ...{ handed: ONE_PIECE.includes(shape) || of.next() < 0.1, ways: design.strands.length + of.whole(0, 1) },
  });
  const guard = component('guard', { kind: 'spacer', alongMm: 5, acrossMm: 0.9, roundingMm: 0, holeMm: 0.7 });
  const crimp = {
    ...design.components['crimp']!,
    holeMm: 0.8 + of.whole(0, 5) / 10,
    alongMm: of.whole(10, 30) / 10,
  };
  const cover = {
    ...design.components['cover']!,
    alongMm: 3 + of.whole(0, 20) / 10,
    acrossMm: 5,
    closedMm: of.next() < 0.1 ? null : 2.4,
  };
  const unchained = withoutLinks({ ...design, ends: { ...design.ends, extenderMm: 0 } });
  const { ends } = of.next() < 0.25 ? chained(unchained, of.whole(10, 50)) : unchained;
  return {
    ...design,
    oneSided: of.next() < 0.2,
    upright: of.next() < 0.5,
    ends: {
      ...ends,
      ring: of.next() < (ONE_PIECE.includes(shape) ? 0.25 : 0.85) ? null : of.pick(['ring', 'button']),
      cover: of.next() < 0.35 ? null : 'cover',
      guard: of.next() < 0.3 ? 'guard' : null,
      loopMm: of.whole(0, 60) / 10,
    },
    wire: { ...design.wire, diameterMm: of.pick([0.3, 0.38, 0.46, 0.6]) },
    components: {
      ...design.components,
      clasp,
      guard,
      crimp,
      cover,
      button: component('button', { alongMm: 9 }),
    },
  };
}

/** Something on the wire: by its own loop, a bail, a hole from side to side, or rings of any kind. */
function hungAnyhow(of: Random, design: Design): Design {
  const ring = (joint: Joint | null): Component => ({
    ...component(joint ?? 'unstated', {
      kind: 'ring',
      shape: 'ring',
      alongMm: 3.4,
      acrossMm: 5,
      roundingMm: 1.5,
    }),
    holeMm: of.pick([2, 3.6]),
    ...(joint === null ? {} : { joint }),
  });
  const rings = [ring('closed'), ring('open'), ring('split'), ring(null)];
  const pendant = component('drop', {
    ...{ kind: 'pendant', shape: 'drop', alongMm: 0, acrossMm: 12, roundingMm: 0, hangMm: 24 },
    ...{ loop: of.pick(['in-plane', 'through', null]), holeMm: of.pick([0, 1.6]) },
  });
  return {
    ...design,
    hanging: {
      pendant: 'drop',
      rings: Array.from({ length: of.whole(0, 3) }, () => of.pick(rings).id),
    },
    components: {
      ...design.components,
      drop: pendant,
      ...Object.fromEntries(rings.map((one) => [one.id, one])),
    },
  };
}

/** Holes from a needle's to a cord's, so that some tails are stopped at once, some half-way. */
function drilledAnyhow(of: Random, design: Design): Design {
  const components = Object.values(design.components).map((one) => {
    if (one.kind !== 'bead') return one;
    const alongMm = of.next() < 0.05 ? of.whole(25, 70) : one.alongMm;
    const roundingMm = Math.min(one.roundingMm, alongMm / 2, one.acrossMm / 2);
    return { ...one, alongMm, roundingMm, holeMm: of.pick([0.5, 0.7, 0.9, 1.2, 1.2, 1.2]) };
  });
  return { ...design, components: Object.fromEntries(components.map((one) => [one.id, one])) };
}

function randomRules(of: Random): Rules {
  const wire = { ...plainRules.wire, tailMm: of.pick([0, 12.7, 25.4, 40]), gripMm: of.pick([0, 5, 25.4]) };
  return { ...plainRules, wire };
}

const KINDS: readonly PieceKind[] = ['necklace', 'bracelet', 'anklet', 'collar'];
const ASKED: Readonly<Record<PieceKind, Measure['of']>> = {
  necklace: 'length',
  bracelet: 'wrist',
  anklet: 'ankle',
  collar: 'neck',
};

/** A random piece in a random size for a random hand, with its card; null where the core refuses the design or the size. */
export function randomWork(seed: number): Work | null {
  const of = random(seed);
  const kind = of.pick(KINDS);
  const made = (of.next() < 0.7 ? randomDesign : randomStrands)(of, kind, { sections: 4, repeats: 8 });
  const drilled = closedAnyhow(of, drilledAnyhow(of, made));
  const design = of.next() < 0.45 ? hungAnyhow(of, drilled) : drilled;
  if (validateDesign(design).length > 0) return null;
  const rules = randomRules(of);
  const hand: Hand = of.pick(['left', 'right']);
  const listed = describe(design, rules, 5000, usual(design));
  const mm = listed.fittedMm * (0.8 + of.next() * 0.4);
  const measure: Measure = { of: ASKED[kind], mm };
  const sizing = size(design, rules, 5000, { measure, sit: 'easy', hand, pick: 'best', quantity: 1 });
  // A measure that the piece doesn't reach is strung as listed.
  const candidate = sizing.status === 'fits' || sizing.status === 'near' ? sizing.chosen : listed;
  return { design, rules, candidate, hand, card: stringing(design, rules, candidate, hand) };
}
