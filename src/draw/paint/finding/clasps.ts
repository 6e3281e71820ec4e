/**
 * Clasps, one function each: bearing points at x = ±half the working length,
 * the eye that takes the wire on the right, metal reaching past both.
 */
import type { Component } from '#core/design/component.ts';
import { element, num, pair } from '../../svg/text.ts';
import type { Ink } from '../ink/ink.ts';
import type { Light } from '../ink/light.ts';
import { materials } from '../material/all.ts';
import { bar, circlePath, ovalPath } from './bar.ts';
import { solid } from './body.ts';

export type ClaspPainter = (ink: Ink, clasp: Component, light: Light) => string;

/** Wire of the eyes and rings of a clasp, as a share of its width, and its least, mm. */
function wireOf({ acrossMm }: Component): number {
  return Math.max(0.5, acrossMm * 0.13);
}

/** Inside radius of an eye, mm: wide enough for the wire's loop. */
function eyeOf({ acrossMm }: Component): number {
  return Math.max(0.55, Math.min(1.2, acrossMm * 0.14));
}

/** The eyes on the right, one for each strand, their far inside at the bearing point. */
function eyes(clasp: Component): string {
  const wire = wireOf(clasp);
  const inside = eyeOf(clasp);
  const centre = clasp.alongMm / 2 - inside;
  let d = '';
  for (let way = 0; way < clasp.ways; way += 1) {
    const y = clasp.ways === 1 ? 0 : ((way + 0.5) / clasp.ways - 0.5) * clasp.acrossMm * 0.86;
    d += circlePath(centre, y, inside + wire / 2);
  }
  return bar(d, wire, clasp.look);
}

function line(d: string, clasp: Component, widthMm: number): string {
  return element('path', {
    d,
    fill: 'none',
    stroke: materials[clasp.look.family].edge(clasp.look),
    'stroke-width': widthMm,
  });
}

/** The lamp mirrored along a rounded edge. */
function shine(d: string, widthMm: number): string {
  return element('path', {
    d,
    fill: 'none',
    stroke: '#fff',
    'stroke-width': widthMm,
    'stroke-linecap': 'round',
    'stroke-opacity': '.75',
  });
}

/** A claw with a sprung gate worked by a small lever. */
export const lobster: ClaspPainter = (ink, clasp, light) => {
  const l = clasp.alongMm;
  const w = clasp.acrossMm;
  const at = (x: number, y: number): string => pair(x * l, y * w);
  const claw =
    `M${at(0.3, -0.13)}C${at(0.12, -0.5)} ${at(-0.3, -0.56)} ${at(-0.46, -0.34)}` +
    `C${at(-0.6, -0.14)} ${at(-0.6, 0.2)} ${at(-0.44, 0.36)}C${at(-0.26, 0.52)} ${at(0.1, 0.5)} ${at(0.3, 0.13)}Z` +
    `M${at(-0.1, -0.2)}C${at(-0.2, -0.3)} ${at(-0.4, -0.28)} ${at(-0.46, -0.1)}C${at(-0.5, 0.08)} ${at(-0.42, 0.24)} ${at(-0.3, 0.27)}` +
    `C${at(-0.16, 0.28)} ${at(-0.04, 0.1)} ${at(-0.1, -0.2)}Z`;
  const lever = `M${at(0.04, 0.42)}Q${at(0.06, 0.62)} ${at(0.16, 0.58)}L${at(0.19, 0.32)}Z`;
  return (
    eyes(clasp) +
    solid(ink, lever, clasp.look, light, w * 0.03) +
    solid(ink, claw, clasp.look, light, w * 0.025) +
    line(`M${at(-0.2, 0.27)}L${at(-0.24, 0.47)}`, clasp, w * 0.03) +
    shine(`M${at(0.2, -0.2)}C${at(0.06, -0.4)} ${at(-0.2, -0.46)} ${at(-0.38, -0.34)}`, w * 0.06) +
    solid(
      ink,
      `M${at(0.27, -0.17)}H${num(0.35 * l)}V${num(0.17 * w)}H${num(0.27 * l)}Z`,
      clasp.look,
      light,
      w * 0.03,
    )
  );
};

/** A hollow ring with a sprung bolt drawn back by a pin. */
export const springRing: ClaspPainter = (_ink, clasp) => {
  const wire = clasp.acrossMm * 0.2;
  const inside = clasp.acrossMm / 2 - wire;
  const centre = -clasp.alongMm / 2 + inside;
  const radius = inside + wire / 2;
  const pinX = centre + radius * 0.5;
  const pinY = radius * 0.87;
  return (
    eyes(clasp) +
    bar(circlePath(centre, 0, radius), wire, clasp.look) +
    bar(`M${pair(pinX, pinY)}l${pair(wire * 0.5, wire * 0.9)}`, wire * 0.6, clasp.look) +
    line(`M${pair(centre - radius * 0.2, radius - wire / 2)}v${num(wire)}`, clasp, wire * 0.12)
  );
};

/** A ring that lies aslant, and the bar that was put through it and now lies across, drawn against its far side. */
export const toggle: ClaspPainter = (_ink, clasp) => {
  const wire = clasp.acrossMm * 0.17;
  const halfMm = clasp.alongMm / 2;
  const eye = eyeOf(clasp);
  const ringFromMm = -halfMm + 2 * eye;
  const ringToMm = ringFromMm + (clasp.alongMm - 4 * eye) * 0.84;
  const radiusX = (ringToMm - ringFromMm) / 2;
  const barMm = ringToMm - wire * 1.3;
  const barHalfMm = clasp.acrossMm * 0.58;
  return (
    bar(circlePath(-halfMm + eye, 0, eye + wire * 0.35), wire * 0.7, clasp.look) +
    eyes(clasp) +
    bar(ovalPath(ringFromMm + radiusX, 0, radiusX, clasp.acrossMm / 2 - wire / 2), wire, clasp.look) +
    bar(`M${pair(barMm, 0)}H${num(halfMm - 2 * eye)}`, wire * 0.7, clasp.look) +
    bar(`M${pair(barMm, -barHalfMm)}V${num(barHalfMm)}`, wire * 1.15, clasp.look)
  );
};

/** A bent hook. */
export const hook: ClaspPainter = (_ink, clasp) => {
  const wire = clasp.acrossMm * 0.2;
  const half = clasp.alongMm / 2;
  const bend = clasp.acrossMm * 0.36;
  const left = -half - wire / 2 + bend;
  // The shank ends in the eye, whatever is left between them.
  const shank = half - 2 * eyeOf(clasp) - wireOf(clasp) / 2;
  const d =
    `M${pair(shank, 0)}H${num(half * 0.5)}C${pair(half * 0.1, 0)} ${pair(0, -bend)} ${pair(left, -bend)}` +
    `A${num(bend)} ${num(bend)} 0 0 0 ${pair(left, bend)}H${num(-half * 0.1)}l${pair(wire, wire * 0.8)}`;
  return eyes(clasp) + bar(d, wire, clasp.look);
};

/** A box that a sprung tongue clicks into. */
export const box: ClaspPainter = (ink, clasp, light) => {
  const l = clasp.alongMm;
  const w = clasp.acrossMm;
  const shell = (from: number, to: number, height: number): string =>
    `M${pair(from * l, -height * w)}H${num(to * l)}V${num(height * w)}H${num(from * l)}Z`;
  return (
    eyes(clasp) +
    solid(ink, shell(-0.46, -0.3, 0.3), clasp.look, light, w * 0.02) +
    solid(ink, shell(-0.34, 0.36, 0.5), clasp.look, light, w * 0.025) +
    line(shell(-0.26, 0.28, 0.4), clasp, w * 0.025) +
    line(`M${pair(-0.3 * l, -0.1 * w)}V${num(0.1 * w)}`, clasp, w * 0.05)
  );
};

/** Two cups drawn together by the magnets in them. */
export const magnetic: ClaspPainter = (ink, clasp, light) => {
  const l = clasp.alongMm;
  const w = clasp.acrossMm;
  const cup = (side: 1 | -1): string =>
    `M${pair(side * 0.01 * l, -0.5 * w)}H${num(side * 0.26 * l)}` +
    `Q${pair(side * 0.38 * l, -0.5 * w)} ${pair(side * 0.38 * l, 0)}T${pair(side * 0.26 * l, 0.5 * w)}H${num(side * 0.01 * l)}Z`;
  const far = bar(circlePath(-l / 2 + 0.7, 0, 0.7 + wireOf(clasp) / 2), wireOf(clasp), clasp.look);
  return (
    eyes(clasp) +
    far +
    solid(ink, cup(-1), clasp.look, light, w * 0.025) +
    solid(ink, cup(1), clasp.look, light, w * 0.025)
  );
};
