/** A length of wire to cut, with the length that it is. */
import type { Design } from '#core/design/design.ts';
import { wireLine } from '../paint/finding/wire.ts';
import { svgDocument, type Caption } from '../svg/document.ts';
import { element, escapeXml, num, pair } from '../svg/text.ts';

export type CutWireOptions = Caption & {
  /** As it is written beside the wire. */
  readonly label: string;
};

/** Drawn as long as this whatever its length, so that its thickness can be seen, mm. */
const DRAWN_MM = 60;
const TEXT_MM = 4;

export function drawCutWire({ wire }: Design, options: CutWireOptions): string {
  // Off the reel it keeps a bend.
  const line = wireLine(
    `M${pair(2, 2)}q${pair(DRAWN_MM / 2 - 2, -5)} ${pair(DRAWN_MM - 4, 0)}`,
    wire.diameterMm,
  );
  const yMm = 6;
  const measure = element('path', {
    d: `M${pair(2, yMm - 1.5)}v3M${pair(DRAWN_MM - 2, yMm - 1.5)}v3M${pair(2, yMm)}H${num(DRAWN_MM - 2)}`,
    stroke: 'currentColor',
    'stroke-width': 0.3,
    fill: 'none',
  });
  const text = element(
    'text',
    {
      x: DRAWN_MM / 2,
      y: yMm + TEXT_MM + 1.4,
      fill: 'currentColor',
      'font-size': TEXT_MM,
      'text-anchor': 'middle',
      'font-family': 'inherit',
    },
    escapeXml(options.label),
  );
  const box = { x: 0, y: -4, width: DRAWN_MM, height: yMm + TEXT_MM + 7 };
  return svgDocument(options, box, '', line + measure + text);
}
