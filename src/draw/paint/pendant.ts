/** What hangs from the middle of the wire: rings, then the pendant. */
import type { Component } from '#core/design/component.ts';
import type { Design } from '#core/design/design.ts';

import { num } from '../svg/text.ts';
import { paintBead } from './bead/bead.ts';
import { bar, circlePath } from './finding/bar.ts';
import { ring } from './finding/ring.ts';
import type { Ink } from './ink/ink.ts';
import { lightOn } from './ink/light.ts';
import { useAt } from './bead/strand.ts';

/** A pendant hangs: its own x runs down the page. */
const DOWN_RAD = Math.PI / 2;

/** The eye or bail at a pendant's top, as a share of how far it hangs, and its most, mm. */
const EYE_SHARE = 0.14;
const EYE_MOST_MM = 4;

/** How far rings and pendant reach below the wire, mm; 0 where nothing hangs. */
export function hangLengthMm(design: Design): number {
  if (design.hanging === null) return 0;
  const rings = design.hanging.rings.map((id) => design.components[id]?.alongMm ?? 0);
  const pendant = design.components[design.hanging.pendant]?.hangMm ?? 0;
  return rings.reduce((sum, mm) => sum + mm, 0) + pendant;
}

/** Rings and pendant, from the wire at (x, y) down. Nothing where the design hangs nothing. */
export function paintHanging(ink: Ink, design: Design, xMm: number, yMm: number): string {
  if (design.hanging === null) return '';
  let painted = '';
  let topMm = yMm;
  for (const id of design.hanging.rings) {
    const one = design.components[id];
    if (one === undefined) continue;
    const href = ink.symbol(`hung ring ${id}`, () => ring(one));
    painted += useAt(href, xMm, topMm + one.alongMm / 2, 0);
    topMm += one.alongMm;
  }
  const pendant = design.components[design.hanging.pendant];
  if (pendant === undefined) return painted;
  const href = ink.symbol(`pendant ${pendant.id}`, () => paintPendant(ink, pendant));
  return painted + useAt(href, xMm, topMm, DOWN_RAD);
}

/** The pendant along x from its bearing point at the origin. */
function paintPendant(ink: Ink, pendant: Component): string {
  const hangMm = Math.max(1, pendant.hangMm);
  const eyeMm = Math.min(EYE_MOST_MM, hangMm * EYE_SHARE);
  const bodyMm = hangMm - eyeMm;
  const body: Component = {
    ...pendant,
    shape: pendant.shape === 'ring' ? 'coin' : pendant.shape,
    alongMm: bodyMm,
    roundingMm: Math.min(pendant.roundingMm, bodyMm / 2, pendant.acrossMm / 2),
  };
  const light = lightOn(DOWN_RAD);
  const painted = paintBead(ink, body, light, 0);
  const eye = bar(circlePath(eyeMm * 0.5, 0, eyeMm * 0.62), eyeMm * 0.28, {
    family: 'metal',
    colour: pendant.look.family === 'metal' ? pendant.look.colour : '#c4c7cc',
    accent: null,
  });
  return `${eye}<g transform="translate(${num(eyeMm + bodyMm / 2)} 0)">${painted}</g>`;
}
