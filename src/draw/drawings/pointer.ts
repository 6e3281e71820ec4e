/** From a place on the screen to one in a drawing, and back. */
import type { Box } from '../svg/document.ts';

/** Where the drawing stands on the screen, CSS pixels: what an element's bounding rectangle gives. */
export type Frame = {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
};

export type Place = { readonly xMm: number; readonly yMm: number };

/** Pixels a millimetre, and the space left beside the drawing where its shape isn't the frame's (xMidYMid meet). */
function fit(box: Box, frame: Frame): { scale: number; left: number; top: number } {
  const scale = Math.min(frame.width / box.width, frame.height / box.height);
  return {
    scale,
    left: frame.left + (frame.width - box.width * scale) / 2,
    top: frame.top + (frame.height - box.height * scale) / 2,
  };
}

/** The drawing's place under a pointer. */
export function placeAt(box: Box, frame: Frame, clientX: number, clientY: number): Place {
  const { scale, left, top } = fit(box, frame);
  return { xMm: box.x + (clientX - left) / scale, yMm: box.y + (clientY - top) / scale };
}

/** The pointer's place over a place in the drawing. */
export function pointerAt(box: Box, frame: Frame, { xMm, yMm }: Place): { clientX: number; clientY: number } {
  const { scale, left, top } = fit(box, frame);
  return { clientX: left + (xMm - box.x) * scale, clientY: top + (yMm - box.y) * scale };
}
