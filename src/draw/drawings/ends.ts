/** A close-up of the clasp's end: wire loop, crimp, cover, and the tail run back through the end beads. */
import type { Design } from '#core/design/design.ts';
import type { Placed } from '#core/design/expand.ts';
import { STEEL, wireLine } from '../paint/finding/wire.ts';
import { paintClosing } from '../paint/finding/all.ts';
import { mixInk } from '../paint/ink/ink.ts';
import { paintSeenThrough, PLATE_ROOM_MM } from '../paint/bead/seenThrough.ts';
import { paintSpots } from '../paint/bead/strand.ts';
import { claspEnd, lengthOfEnd, placeEnd } from '../layout/closing.ts';
import { toParts, type Spot } from '../layout/spot.ts';
import { placeStraight } from '../layout/straight.ts';
import { svgDocument, type Caption } from '../svg/document.ts';
import { layCallouts } from './callouts.ts';
import { element, num, pair } from '../svg/text.ts';

export type EndsOptions = Caption & {
  /** Doubled wire run back through the end beads, from the crimp on, mm. */
  readonly tailMm: number;
  /** What to write beside each part; a part without words gets no line. */
  readonly labels: {
    readonly clasp?: string;
    readonly loop?: string;
    readonly crimp?: string;
    readonly cover?: string;
    readonly tail?: string;
  };
};

/** Beads shown beyond the tail's end, so that it is seen to stop, mm. */
const BEYOND_MM = 6;

/** Letters' heights in the picture's width: read at arm's length where it is a third of a sheet wide. */
const TEXTS = 22;

/** The first strand's clasp end, sequence as `expand` gives it. Millimetres. */
export function drawEnds(design: Design, sequence: readonly Placed[], options: EndsOptions): string {
  const ink = mixInk(options.idPrefix);
  const end = claspEnd(design);
  const startMm = lengthOfEnd(end);
  const { closer, strung } = splitEnd(sequence);
  const crimpSpots = placeStraight(toParts(closer), startMm, 0);
  const crimp =
    crimpSpots.find((spot) => spot.component.kind === 'crimp') ?? hiddenCrimp(sequence, crimpSpots);
  const beadsFromMm = startMm + crimpSpots.reduce((sum, spot) => sum + spot.component.alongMm, 0);
  const shown = placeStraight(toParts(strung), beadsFromMm, 0).filter(
    (spot) => spot.xMm - spot.component.alongMm / 2 < beadsFromMm + options.tailMm + BEYOND_MM,
  );
  const tailEndMm = beadsFromMm + options.tailMm;
  const rightMm = Math.max(tailEndMm, ...shown.map((spot) => spot.xMm + spot.component.alongMm / 2));
  const wires = paintWires(design.wire.diameterMm, startMm, tailEndMm, rightMm);
  const cover = crimpSpots.find((spot) => spot.component.kind === 'cover');
  const painted =
    placeEnd(end, 0, 0, 1)
      .map((spot) => paintClosing(ink, design, spot))
      .join('') +
    paintSeenThrough(ink, shown) +
    wires +
    (crimp === undefined ? '' : paintSpots(ink, [crimp])) +
    (cover === undefined ? '' : openCover(cover));
  const halfMm = Math.max(
    4,
    ...shown.map((spot) => spot.component.acrossMm / 2 + PLATE_ROOM_MM),
    // A toggle's bar reaches past its ring.
    ...end.map((piece) => (piece.component?.acrossMm ?? 0) * 0.64),
  );
  const textMm = rightMm / TEXTS;
  const claspMm = end[0]?.kind === 'clasp' ? end[0].alongMm : 0;
  const { labels } = options;
  const callouts = layCallouts(
    [
      { words: labels.clasp, atMm: claspMm * 0.4, side: 'below' },
      { words: labels.loop, atMm: (claspMm + startMm) / 2, side: 'above' },
      { words: labels.crimp, atMm: crimp?.xMm ?? startMm, side: 'below' },
      { words: cover === undefined ? undefined : labels.cover, atMm: cover?.xMm ?? startMm, side: 'above' },
      { words: labels.tail, atMm: (beadsFromMm + tailEndMm) / 2, side: 'below' },
    ],
    halfMm,
    rightMm,
    textMm,
  );
  const reachMm = callouts.reachMm + 1;
  const box = { x: -3, y: -reachMm, width: callouts.rightMm + 6, height: 2 * reachMm };
  return svgDocument(options, box, ink.definitions(), painted + callouts.svg);
}

/** What closes the clasp end, and what is strung after it. */
function splitEnd(sequence: readonly Placed[]): { closer: Placed[]; strung: Placed[] } {
  const isEnd = (placed: Placed): boolean => placed.section === 'end';
  const first = sequence.findIndex((placed) => !isEnd(placed));
  const cut = first === -1 ? sequence.length : first;
  return { closer: sequence.slice(0, cut), strung: sequence.slice(cut).filter((placed) => !isEnd(placed)) };
}

/** A crimp inside its cover, laid where the cover is. */
function hiddenCrimp(sequence: readonly Placed[], covers: readonly Spot[]): Spot | undefined {
  const hidden = sequence.find((placed) => placed.covered === true);
  const cover = covers.find((spot) => spot.component.kind === 'cover');
  return hidden === undefined || cover === undefined ? undefined : { ...cover, component: hidden.component };
}

/** The wire that runs on, and beside it, not crossed, the tail that stops. */
function paintWires(wireMm: number, fromMm: number, tailEndMm: number, toMm: number): string {
  const apart = wireMm * 0.62;
  return (
    wireLine(`M${pair(fromMm, -apart)}H${num(toMm)}`, wireMm) +
    wireLine(`M${pair(fromMm, apart)}H${num(tailEndMm)}`, wireMm) +
    element('path', {
      d: `M${pair(tailEndMm, apart - wireMm)}v${num(wireMm * 2)}`,
      stroke: STEEL.colour,
      'stroke-width': wireMm * 0.3,
    })
  );
}

/** The cover as an outline, so that the crimp inside it is seen. */
function openCover({ xMm, component }: Spot): string {
  return element('ellipse', {
    cx: xMm,
    rx: component.alongMm / 2,
    ry: component.acrossMm / 2,
    fill: component.look.colour,
    'fill-opacity': '.25',
    stroke: 'currentColor',
    'stroke-width': 0.16,
    'stroke-dasharray': '.6 .4',
  });
}
