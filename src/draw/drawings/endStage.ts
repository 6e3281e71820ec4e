/** One end of a strand while it is made: crimp and finding threaded, led back, squeezed, covered, its tail hidden. */
import type { Component } from '#core/design/component.ts';
import type { Design } from '#core/design/design.ts';
import type { Placed } from '#core/design/expand.ts';
import { claspEnd, lengthOfEnd, placeEnd, ringEnd, type Piece } from '../layout/closing.ts';
import { toParts, turnedRound, type Part, type Spot } from '../layout/spot.ts';
import { placeStraight } from '../layout/straight.ts';
import { paintSeenThrough } from '../paint/bead/seenThrough.ts';
import { paintSpots } from '../paint/bead/strand.ts';
import { paintClosing } from '../paint/finding/all.ts';
import { wireLine } from '../paint/finding/wire.ts';
import { mixInk, type Ink } from '../paint/ink/ink.ts';
import { svgDocument, type Caption } from '../svg/document.ts';
import { element, num, pair } from '../svg/text.ts';

export type EndStageOptions = Caption & {
  readonly end: 'clasp' | 'ring';
  /** Whether the wire comes back through the crimp. */
  readonly looped: boolean;
  readonly crimp: 'open' | 'closed' | 'covered';
  readonly tail: 'none' | 'loose' | 'within' | 'cut';
  /** Whether beads stand beside it. */
  readonly strung: boolean;
  /** Doubled wire within the beads, from the crimp on, mm. */
  readonly tailMm: number;
};

/** How much of the strand is shown beyond the tail, and of the bare wire, mm. */
const BEYOND_MM = 7;
/** Wire that stands out beyond what it is led through, as far as it is shown, mm. */
const OUT_MM = 9;
/** Wire that stands out beyond what it is threaded through, mm. */
const THROUGH_MM = 2.5;
/** No picture shows less than this, so that small findings don't fill a page, mm. */
const LEAST_MM = 34;
const MARGIN_MM = 2.5;

/** The clasp's end drawn from the left, the ring's mirrored, so that each lies where it lies on the board. Millimetres. */
export function drawEndStage(design: Design, sequence: readonly Placed[], options: EndStageOptions): string {
  const ink = mixInk(options.idPrefix);
  const isRing = options.end === 'ring';
  const parts = isRing ? turnedRound(toParts(sequence)) : toParts(sequence);
  const closing = isRing ? ringEnd(design) : claspEnd(design);
  const laid = layEnd(design, sequence, parts, closing, options);
  const held = paintHeld(ink, design, closing, options.looped);
  const work = paintWork(ink, design, laid, options);
  // A single wire runs through the eye, under its rim.
  const painted = options.looped ? held + work : work + held;
  const halfMm = Math.max(
    5,
    ...laid.beads.map(({ component }) => component.acrossMm / 2),
    ...closing.map((piece) => (piece.component?.acrossMm ?? 0) * 0.64),
  );
  const wideMm = Math.max(LEAST_MM, laid.rightMm);
  const content = isRing
    ? element('g', { transform: `translate(${num(wideMm)} 0)scale(-1 1)` }, painted)
    : painted;
  const box = {
    x: -MARGIN_MM,
    y: -halfMm - MARGIN_MM,
    width: wideMm + 2 * MARGIN_MM,
    height: 2 * (halfMm + MARGIN_MM),
  };
  return svgDocument(options, box, ink.definitions(), content);
}

type LaidEnd = {
  /** Where the loop bears on what it is led round, and where the crimp begins. */
  readonly bearsMm: number;
  readonly crimp: Spot | null;
  readonly cover: Spot | null;
  readonly crimpEndMm: number;
  readonly beads: readonly Spot[];
  /** Where the tail leaves the beads. */
  readonly tailEndMm: number;
  readonly rightMm: number;
};

function layEnd(
  design: Design,
  sequence: readonly Placed[],
  parts: readonly Part[],
  closing: readonly Piece[],
  { strung, tailMm }: EndStageOptions,
): LaidEnd {
  const startMm = lengthOfEnd(closing);
  const bearsMm = startMm - design.ends.loopMm;
  const first = parts.findIndex(({ section }) => section !== 'end');
  const closers = placeStraight(parts.slice(0, first === -1 ? parts.length : first), startMm, 0);
  const [closer] = closers;
  const crimpPart = sequence.find(({ component }) => component.kind === 'crimp')?.component;
  const cover = closers.find(({ component }) => component.kind === 'cover') ?? null;
  const crimp = closer === undefined || crimpPart === undefined ? null : { ...closer, component: crimpPart };
  const crimpEndMm = startMm + closers.reduce((sum, { component }) => sum + component.alongMm, 0);
  const tailEndMm = crimpEndMm + tailMm;
  const all = first === -1 ? [] : placeStraight(parts.slice(first), crimpEndMm, 0);
  const beads = strung
    ? all.filter(
        ({ section, xMm, component }) =>
          section !== 'end' && xMm - component.alongMm / 2 < tailEndMm + BEYOND_MM,
      )
    : [];
  const lastMm = Math.max(crimpEndMm, ...beads.map(({ xMm, component }) => xMm + component.alongMm / 2));
  const rightMm = lastMm + (strung ? 0 : OUT_MM + BEYOND_MM);
  return { bearsMm, crimp, cover, crimpEndMm, beads, tailEndMm, rightMm };
}

/** Clasp or ring, and the wire's loop once it is one. */
function paintHeld(ink: Ink, design: Design, closing: readonly Piece[], looped: boolean): string {
  return placeEnd(closing, 0, 0, 1)
    .filter(({ kind }) => looped || kind !== 'wire-loop')
    .map((spot) => paintClosing(ink, design, spot))
    .join('');
}

function paintWork(ink: Ink, design: Design, laid: LaidEnd, options: EndStageOptions): string {
  const { crimp, cover, beads } = laid;
  const wires = paintWires(design.wire.diameterMm, laid, options);
  const over =
    options.crimp === 'covered' && cover !== null
      ? paintSpots(ink, [cover])
      : crimp === null
        ? ''
        : options.crimp === 'open'
          ? openCrimp(crimp.component, crimp.xMm)
          : paintSpots(ink, [crimp]);
  // Wires show through the beads only where two of them are to be seen.
  const isSeenThrough = options.tail === 'within' || options.tail === 'cut';
  if (!isSeenThrough) return wires + paintSpots(ink, beads) + over;
  return paintSeenThrough(ink, beads) + wires + over;
}

/** One wire up to what it will hold, or two side by side, the tail as far as it goes. */
function paintWires(
  wireMm: number,
  laid: LaidEnd,
  { looped, tail, strung, tailMm }: EndStageOptions,
): string {
  const { bearsMm, crimpEndMm, tailEndMm, rightMm } = laid;
  const apart = wireMm * 0.62;
  const endMm = rightMm + (strung ? 0 : 2);
  if (!looped) return wireLine(`M${pair(bearsMm - THROUGH_MM, 0)}H${num(endMm)}`, wireMm);
  const startMm = laid.crimp === null ? crimpEndMm : laid.crimp.xMm - laid.crimp.component.alongMm / 2;
  const running = wireLine(`M${pair(startMm, -apart)}H${num(endMm)}`, wireMm);
  if (tail === 'none') return running;
  const within = strung ? tailEndMm : crimpEndMm;
  if (tail === 'cut') return wireLine(`M${pair(startMm, apart)}H${num(within)}`, wireMm) + running;
  // It leaves the beads beside the wire that runs on, and stands away from it.
  const outMm = within + (tail === 'within' && tailMm === 0 ? 0.5 : 0);
  const free = `M${pair(startMm, apart)}H${num(outMm)}q${pair(OUT_MM * 0.4, 0.2)} ${pair(OUT_MM, 3.4)}`;
  return running + wireLine(free, wireMm);
}

/** Not squeezed yet: a short tube with the wires seen in it. */
function openCrimp({ alongMm, acrossMm, look }: Component, xMm: number): string {
  const tube = {
    x: xMm - alongMm / 2,
    y: -acrossMm / 2,
    width: alongMm,
    height: acrossMm,
    rx: Math.min(alongMm, acrossMm) * 0.08,
  };
  const line = { stroke: 'currentColor', 'stroke-width': 0.14 };
  return (
    element('rect', { ...tube, fill: look.colour, 'fill-opacity': '.55', ...line }) +
    element('ellipse', {
      cx: xMm + alongMm / 2,
      rx: acrossMm * 0.14,
      ry: acrossMm / 2,
      fill: look.colour,
      'fill-opacity': '.4',
      ...line,
    })
  );
}
