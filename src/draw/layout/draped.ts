/** A necklace laid out to be looked at: hanging in a curve from beyond the picture's upper edge, its middle below. */
import { hang } from '#core/body/hanging.ts';
import type { Placed } from '#core/design/expand.ts';
import { placeAlong } from './along.ts';
import { hanging } from './hanging.ts';
import { toParts, type Spot } from './spot.ts';

export type Drape = {
  readonly spots: readonly Spot[];
  /** The middle's height below the two ends. */
  readonly sagMm: number;
};

/** Least sag that a strand barely longer than its span is given, as a share of the span. */
const TAUT_SHARE = 1.02;

/**
 * @param lengthMm how much of the strand hangs between the two ends; the rest lies beyond the picture
 * @param spanMm distance of the two ends, which lie at height 0 either side of x = 0
 */
export function drape(sequence: readonly Placed[], lengthMm: number, spanMm: number): Drape {
  const heldMm = Math.max(lengthMm, spanMm * TAUT_SHARE);
  const hung = hang(heldMm, spanMm, 0);
  if (hung === null) return { spots: [], sagMm: 0 };
  const { spots } = placeAlong(toParts(sequence), hanging(hung, heldMm), heldMm / 2);
  return { spots, sagMm: hung.sagMm };
}
