/** A piece as a picture to be looked at, on its ground: what card and share are made of. */
import type { Component } from '#core/design/component.ts';
import type { Design } from '#core/design/design.ts';
import { finishedLengthMm } from '#core/design/loopParts.ts';
import type { Placed } from '#core/design/expand.ts';
import { paintClosing } from '../paint/finding/all.ts';
import type { Ink } from '../paint/ink/ink.ts';
import { hangLengthMm, paintHanging } from '../paint/pendant.ts';
import { paintShadows } from '../paint/shadow.ts';
import { paintPile, paintSpots } from '../paint/bead/strand.ts';
import { closingOnce, type ClosingSpot } from '../layout/closing.ts';
import { drape } from '../layout/draped.ts';
import { placeLoop } from '../layout/loop.ts';
import { lowestMm, type Spot } from '../layout/spot.ts';
import { tilt } from '../layout/tilted.ts';
import type { Box } from '../svg/document.ts';
import { element, num } from '../svg/text.ts';

type Sequences = readonly (readonly Placed[])[];

/** Everything a piece shows, for its chief colour. */
export function componentsOf(sequences: Sequences): Component[] {
  return sequences.flat().map(({ component }) => component);
}

/** The piece, filling the box: necklaces draped, all else closed and lying on the table. */
export function paintScene(ink: Ink, design: Design, sequences: Sequences, box: Box): string {
  return design.kind === 'necklace'
    ? paintDraped(ink, design, sequences, box)
    : paintLying(ink, design, sequences, box);
}

/** The share of a box that a lying piece may fill. */
const FILL = 0.84;

/** From straight above, the middle of the strand towards the eye and the clasp away. */
const NEAR_RAD = Math.PI / 2;

function paintLying(ink: Ink, design: Design, sequences: Sequences, box: Box): string {
  const loops = sequences.map((sequence) => tilt(placeLoop(design, sequence, NEAR_RAD)));
  const nested = nestLoops(loops.map(({ spots }) => spots));
  const all = nested.flat();
  const wireMm = lowestMm(nested[0] ?? []);
  const around = boundsOf([
    ...all.map(extentOf),
    ...loops.flatMap(({ closing }) => closing.map(extentOf)),
    { xMm: 0, yMm: wireMm + hangLengthMm(design), reachMm: 0 },
  ]);
  const closing = loops.map((loop, at) =>
    closingOnce(loop.closing, at)
      .map((spot) => paintClosing(ink, design, spot))
      .join(''),
  );
  const content =
    paintShadows(ink, all) +
    closing.join('') +
    paintPile(
      ink,
      all.toSorted((a, b) => a.yMm - b.yMm),
    ) +
    paintHanging(ink, design, 0, wireMm);
  const scale = Math.min((box.width * FILL) / around.width, (box.height * FILL) / around.height);
  return placed(content, scale, box, around);
}

/** How far each further strand falls towards the eye, at its nearest; by the clasp they share they lie together. */
const STRAND_STEP_MM = 7;

function nestLoops(loops: readonly (readonly Spot[])[]): Spot[][] {
  return loops.map((spots, at) => {
    const depthMm = Math.max(1, ...spots.map((spot) => Math.abs(spot.yMm)));
    return spots.map((spot) => ({
      ...spot,
      yMm: spot.yMm + at * STRAND_STEP_MM * (0.5 + (0.5 * spot.yMm) / depthMm),
    }));
  });
}

/** How much of a necklace is in the picture, and the most of it, mm: a long rope would be a thread. */
const SEEN_SHARE = 0.52;
const SEEN_MOST_MM = 300;

/** Width of the drape as a share of the picture's, and the sag that goes with it. */
const SPAN_SHARE = 0.8;

function paintDraped(ink: Ink, design: Design, sequences: Sequences, box: Box): string {
  const lengths = sequences.map((sequence) => finishedLengthMm(design, sequence));
  const longestMm = Math.max(1, ...lengths);
  const seenMm = Math.min(SEEN_MOST_MM, longestMm * SEEN_SHARE);
  // A picture of width w holds a drape of span 0.8 w and, four to three, of about 1.4 w in length.
  const widthMm = seenMm / (1.05 * (box.height / box.width) + 0.62);
  const spanMm = widthMm * SPAN_SHARE;
  const drapes = sequences.map((sequence, at) =>
    drape(sequence, seenMm - (longestMm - (lengths[at] ?? longestMm)), spanMm),
  );
  const heightMm = (widthMm * box.height) / box.width;
  const hangs = hangLengthMm(design);
  const sagMm = Math.max(...drapes.map((one) => one.sagMm));
  const topMm = sagMm + hangs + fattest(sequences) / 2 - heightMm * 0.9;
  const around = { x: -widthMm / 2, y: topMm, width: widthMm, height: heightMm };
  const content = drapes
    .map(({ spots }) => {
      const shown = spots.filter((spot) => spot.yMm > topMm - 20 && Math.abs(spot.xMm) < widthMm);
      return paintShadows(ink, shown) + paintSpots(ink, shown);
    })
    .join('');
  const hung = paintHanging(ink, design, 0, drapes[0]?.sagMm ?? 0);
  return placed(content + hung, box.width / widthMm, box, around);
}

function fattest(sequences: Sequences): number {
  return Math.max(1, ...componentsOf(sequences).map(({ acrossMm }) => acrossMm));
}

type Extent = { readonly xMm: number; readonly yMm: number; readonly reachMm: number };

/** A circle that holds a component wherever it is turned. */
function extentOf({ xMm, yMm, component }: Spot | ClosingSpot): Extent {
  const reachMm = component === null ? 0 : Math.max(component.alongMm, component.acrossMm) / 2;
  return { xMm, yMm, reachMm };
}

function boundsOf(extents: readonly Extent[]): Box {
  const left = Math.min(...extents.map(({ xMm, reachMm }) => xMm - reachMm));
  const right = Math.max(...extents.map(({ xMm, reachMm }) => xMm + reachMm));
  const top = Math.min(...extents.map(({ yMm, reachMm }) => yMm - reachMm));
  const bottom = Math.max(...extents.map(({ yMm, reachMm }) => yMm + reachMm));
  return { x: left, y: top, width: Math.max(1, right - left), height: Math.max(1, bottom - top) };
}

/** Content whose millimetres lie in `around`, scaled and moved so that its middle is the box's. */
function placed(content: string, scale: number, box: Box, around: Box): string {
  const x = box.x + box.width / 2 - (around.x + around.width / 2) * scale;
  const y = box.y + box.height / 2 - (around.y + around.height / 2) * scale;
  return element('g', { transform: `translate(${num(x)} ${num(y)})scale(${num(scale, 4)})` }, content);
}
