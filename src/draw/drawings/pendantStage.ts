/** What hangs: its rings joined to it, or hung on the wire between its two neighbours. */
import type { Design } from '#core/design/design.ts';
import type { Placed } from '#core/design/expand.ts';
import { pendantGap } from '#core/design/pendantGap.ts';
import { toParts } from '../layout/spot.ts';
import { lengthOf, placeStraight } from '../layout/straight.ts';
import { paintSpots } from '../paint/bead/strand.ts';
import { wireLine } from '../paint/finding/wire.ts';
import { mixInk } from '../paint/ink/ink.ts';
import { hangLengthMm, paintHanging } from '../paint/pendant.ts';
import { svgDocument, type Caption } from '../svg/document.ts';
import { num, pair } from '../svg/text.ts';

export type PendantStageOptions = Caption & {
  /** Whether it hangs on the strand already, and beads are shown beside it. */
  readonly hung: boolean;
};

/** Beads shown either side, and bare wire beyond where nothing is strung yet, mm. */
const BESIDE_MM = 22;
const BARE_MM = 14;
const MARGIN_MM = 2.5;

/** The first strand's middle, as far as it is strung when it hangs: what comes after it isn't there yet. Millimetres. */
export function drawPendantStage(
  design: Design,
  sequence: readonly Placed[],
  options: PendantStageOptions,
): string {
  const ink = mixInk(options.idPrefix);
  const { after } = pendantGap(sequence);
  const strung = toParts(sequence).filter(({ section }) => section !== 'end');
  const before = options.hung ? strung.slice(0, after) : [];
  const spots = placeStraight(before, -lengthOf(before), 0).filter(
    ({ xMm, component }) => xMm + component.alongMm / 2 > -BESIDE_MM,
  );
  const leftMm = Math.min(-BARE_MM, ...spots.map(({ xMm, component }) => xMm - component.alongMm / 2));
  const fatMm = Math.max(3, ...spots.map(({ component }) => component.acrossMm / 2));
  const wideMm = (design.components[design.hanging?.pendant ?? '']?.acrossMm ?? 0) / 2;
  const wire = options.hung
    ? wireLine(`M${pair(leftMm, 0)}H${num(BARE_MM + 4)}`, design.wire.diameterMm)
    : '';
  const painted = wire + paintSpots(ink, spots) + paintHanging(ink, design, 0, 0);
  const rightMm = Math.max(BARE_MM, wideMm);
  const box = {
    x: Math.min(leftMm, -wideMm) - MARGIN_MM,
    y: -(options.hung ? fatMm : 1) - MARGIN_MM,
    width: rightMm - Math.min(leftMm, -wideMm) + 2 * MARGIN_MM,
    height: (options.hung ? fatMm : 1) + hangLengthMm(design) + 2 * MARGIN_MM,
  };
  return svgDocument(options, box, ink.definitions(), painted);
}
