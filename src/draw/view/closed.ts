/** Closed strands, painted: shared by the loop, the wrist and the pictures. */
import type { Design } from '#core/strand/design.ts';
import { paintClosing } from '../paint/finding/all.ts';
import type { Ink } from '../paint/ink.ts';
import { paintSpots } from '../paint/strand.ts';
import type { PlacedLoop } from '../place/loop.ts';
import type { Box } from '../svg/document.ts';

/** Findings first, so that the beads lie over the wire. */
export function paintLoop(ink: Ink, design: Design, placed: PlacedLoop): string {
  return (
    placed.closing.map((spot) => paintClosing(ink, design, spot)).join('') + paintSpots(ink, placed.spots)
  );
}

/** A square round the origin that holds everything, with a margin, mm. */
export function squareRound(loops: readonly PlacedLoop[], leastMm: number, marginMm: number): Box {
  let reachMm = leastMm;
  for (const { spots, closing } of loops) {
    for (const { component, xMm, yMm } of [...spots, ...closing]) {
      const ownMm = component === null ? 0 : Math.max(component.alongMm, component.acrossMm) / 2;
      reachMm = Math.max(reachMm, Math.abs(xMm) + ownMm, Math.abs(yMm) + ownMm);
    }
  }
  reachMm += marginMm;
  return { x: -reachMm, y: -reachMm, width: 2 * reachMm, height: 2 * reachMm };
}
