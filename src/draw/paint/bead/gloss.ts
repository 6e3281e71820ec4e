/** The mirror image of the lamp on a polished surface: a soft sheen and, harder and smaller, a point. */
import type { Component } from '#core/design/component.ts';
import { element, num, type Attributes } from '../../svg/text.ts';
import type { Ink } from '../ink/ink.ts';
import { glow } from '../ink/glow.ts';
import type { Light } from '../ink/light.ts';
import type { Material } from '../material/material.ts';
import type { Form } from '../shape/form.ts';

/** Where the lamp is mirrored, as a share of the way from the middle to the rim. */
const BALL_AT = 0.46;
const TURNED_AT = 0.42;

export function paintGloss(
  ink: Ink,
  { alongMm, acrossMm }: Component,
  gloss: Material['gloss'],
  form: Form,
  light: Light,
): string {
  const halfAlong = alongMm / 2;
  const halfAcross = acrossMm / 2;
  if (form.gloss === 'none') return '';
  if (form.gloss === 'ball') {
    const cx = light.x * halfAlong * BALL_AT;
    const cy = light.y * halfAcross * BALL_AT;
    return (
      sheen(ink, { cx, cy, rx: halfAlong * 0.5, ry: halfAcross * 0.5 }, gloss.sheen) +
      point(cx, cy, halfAlong * 0.2, halfAcross * 0.13, light, gloss.point)
    );
  }
  if (form.gloss === 'turned') {
    const cy = light.y * halfAcross * TURNED_AT;
    const rx = halfAlong * 0.82;
    return (
      sheen(ink, { cy, rx, ry: halfAcross * 0.26 }, gloss.sheen * 0.9) +
      element('ellipse', {
        cy,
        rx: rx * 0.7,
        ry: halfAcross * 0.07,
        fill: '#fff',
        'fill-opacity': num(gloss.point * 0.6),
      })
    );
  }
  const place = { cx: light.x * halfAlong * 0.3, cy: light.y * halfAcross * 0.3 };
  return sheen(ink, { ...place, rx: halfAlong * 0.6, ry: halfAcross * 0.45 }, gloss.sheen * 0.6);
}

/** A spot that fades outwards; none where it has no strength. */
function sheen(ink: Ink, ellipse: Attributes, strength: number): string {
  if (strength === 0) return '';
  return element('ellipse', { ...ellipse, fill: ink.paint(glow('#fff')), 'fill-opacity': num(strength) });
}

/** A hard spot, longer across the way to the lamp, as a curved surface stretches it. */
function point(cx: number, cy: number, rx: number, ry: number, light: Light, strength: number): string {
  if (strength < 0.2) return '';
  const degrees = (Math.atan2(light.y, light.x) * 180) / Math.PI + 90;
  return element('ellipse', {
    rx,
    ry,
    transform: `translate(${num(cx)} ${num(cy)})rotate(${num(degrees, 0)})`,
    fill: '#fff',
    'fill-opacity': num(strength * 0.9),
  });
}
