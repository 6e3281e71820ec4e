/** The picture that stands for a piece in lists and at the head of its page, where it has no photograph. */
import type { Design } from '#core/design/design.ts';
import type { Placed } from '#core/design/expand.ts';
import { groundFor, paintGround } from '../paint/ground.ts';
import { mixInk } from '../paint/ink/ink.ts';
import { svgDocument, type Box, type Caption } from '../svg/document.ts';
import { componentsOf, paintScene } from './scene.ts';

/** Four to three, in units of no meaning. */
export const CARD_BOX: Box = { x: 0, y: 0, width: 400, height: 300 };

/** Drawn on a ground of its own, so it looks the same on light and dark pages. */
export function drawCard(
  design: Design,
  sequences: readonly (readonly Placed[])[],
  caption: Caption,
): string {
  const ink = mixInk(caption.idPrefix);
  const ground = paintGround(ink, CARD_BOX, groundFor(componentsOf(sequences)));
  const scene = paintScene(ink, design, sequences, CARD_BOX);
  return svgDocument(caption, CARD_BOX, ink.definitions(), ground + scene);
}
