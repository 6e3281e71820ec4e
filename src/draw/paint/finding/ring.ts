/** A ring lying with its face to the eye. */
import type { Component } from '#core/design/component.ts';
import { bar, circlePath } from './bar.ts';

/** Wire of a ring whose outer measure isn't beyond its inside, as a share of it. */
const WIRE_SHARE = 0.2;

/** `alongMm` is the ring's inside, bearing point to bearing point; `acrossMm` its outside. */
export function ring({ alongMm, acrossMm, look }: Component): string {
  const wireMm = acrossMm > alongMm * 1.05 ? (acrossMm - alongMm) / 2 : alongMm * WIRE_SHARE;
  return bar(circlePath(0, 0, alongMm / 2 + wireMm / 2), wireMm, look);
}
