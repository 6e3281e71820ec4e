/** An extender's chain: round links, alternately seen from the face and from the edge. */
import type { Look } from '#core/design/component.ts';
import { num, pair } from '../../svg/text.ts';
import { bar, circlePath } from './bar.ts';

/** Length that one link takes where nobody says it, and its wire (common practice, no source). */
const LINK_MM = 3;
const WIRE_MM = 0.6;

/** Centred on the origin along x. */
export function chain(alongMm: number, linkMm: number | undefined, look: Look): string {
  const links = Math.max(1, Math.round(alongMm / (linkMm ?? LINK_MM)));
  const stepMm = alongMm / links;
  let d = '';
  for (let link = 0; link < links; link += 1) {
    const x = (link + 0.5) * stepMm - alongMm / 2;
    const half = stepMm * 0.62;
    d += link % 2 === 0 ? circlePath(x, 0, half) : `M${pair(x - half, 0)}h${num(2 * half)}`;
  }
  return bar(d, WIRE_MM, look);
}
