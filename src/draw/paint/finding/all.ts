/** What closes a strand, painted where it lies. */
import type { Component, Look, Shape } from '#core/design/component.ts';
import type { Design } from '#core/design/design.ts';
import type { ClosingSpot } from '../../layout/closing.ts';
import type { Ink } from '../ink/ink.ts';
import { lightOn } from '../ink/light.ts';
import { useAt } from '../bead/strand.ts';
import { num } from '../../svg/text.ts';
import { box, hook, lobster, magnetic, springRing, toggle, type ClaspPainter } from './clasps.ts';
import { chain } from './chain.ts';
import { ring } from './ring.ts';
import { STEEL, wireLoop } from './wire.ts';

const clasps: Partial<Readonly<Record<Shape, ClaspPainter>>> = {
  lobster,
  'spring-ring': springRing,
  toggle,
  hook,
  box,
  magnetic,
};

/** One piece of the closing. A clasp of a shape that is none is drawn as a magnetic one: two halves that meet. */
export function paintClosing(ink: Ink, design: Design, spot: ClosingSpot): string {
  const light = lightOn(spot.turnRad);
  const { kind, component, alongMm } = spot;
  const key = [kind, component?.id ?? '', num(alongMm), num(light.x), num(light.y)].join(' ');
  const href = ink.symbol(key, () => {
    if (kind === 'clasp' && component !== null) {
      return (clasps[component.shape] ?? magnetic)(ink, component, light);
    }
    if (kind === 'ring' && component !== null) return ring(component);
    if (kind === 'chain') return chain(alongMm, design.ends.linkMm, lookOfRing(design));
    return wireLoop(alongMm, design.wire.diameterMm, guardOf(design));
  });
  return useAt(href, spot.xMm, spot.yMm, spot.turnRad);
}

/** The chain is bought with its ring. */
function lookOfRing({ ends, components }: Design): Look {
  const metal = components[ends.ring ?? ends.clasp]?.look;
  return metal ?? STEEL;
}

function guardOf(design: Design): Component | null {
  return design.ends.guard === null ? null : (design.components[design.ends.guard] ?? null);
}
