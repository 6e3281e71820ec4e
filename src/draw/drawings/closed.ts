/** Closed strands, painted: shared by the loop and the wrist. */
import type { Design } from '#core/design/design.ts';
import { paintClosing } from '../paint/finding/all.ts';
import type { Ink } from '../paint/ink/ink.ts';
import { hangLengthMm, paintHanging } from '../paint/pendant.ts';
import { paintSpots } from '../paint/bead/strand.ts';
import type { PlacedLoop } from '../layout/loop.ts';
import { lowestMm } from '../layout/spot.ts';
import type { Box } from '../svg/document.ts';

/** Findings first, so that the beads lie over the wire. */
export function paintLoop(ink: Ink, design: Design, placed: PlacedLoop): string {
  return (
    placed.closing.map((spot) => paintClosing(ink, design, spot)).join('') + paintSpots(ink, placed.spots)
  );
}

/** What hangs from the middle of the first strand, which then lies below. */
export function paintLoopHanging(ink: Ink, design: Design, [first]: readonly PlacedLoop[]): string {
  return first === undefined ? '' : paintHanging(ink, design, 0, lowestMm(first.spots));
}

/** What holds everything, with a margin, mm; a circle of `leastMm` round the origin at least. */
export function boxRound(
  design: Design,
  loops: readonly PlacedLoop[],
  leastMm: number,
  marginMm: number,
): Box {
  const xs = [-leastMm, leastMm];
  const ys = [-leastMm, leastMm];
  for (const { spots, closing } of loops) {
    for (const spot of [...spots, ...closing]) {
      const { alongMm } = 'alongMm' in spot ? spot : spot.component;
      const ownMm = Math.max(alongMm, spot.component?.acrossMm ?? 0) / 2;
      xs.push(spot.xMm - ownMm, spot.xMm + ownMm);
      ys.push(spot.yMm - ownMm, spot.yMm + ownMm);
    }
  }
  const hangMm = hangLengthMm(design);
  if (hangMm > 0 && loops[0] !== undefined) ys.push(lowestMm(loops[0].spots) + hangMm);
  const left = Math.min(...xs) - marginMm;
  const top = Math.min(...ys) - marginMm;
  const right = Math.max(...xs) + marginMm;
  return { x: left, y: top, width: right - left, height: Math.max(...ys) + marginMm - top };
}
