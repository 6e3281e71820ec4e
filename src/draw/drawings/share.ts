/** The picture that goes with a link to a piece: 1200 × 630, the piece and its name. */
import type { Design } from '#core/design/design.ts';
import type { Placed } from '#core/design/expand.ts';
import { groundFor, paintGround } from '../paint/ground.ts';
import { mixInk } from '../paint/ink/ink.ts';
import { breakLines, LETTER_SHARE } from '../svg/lines.ts';
import { svgDocument, type Box, type Caption } from '../svg/document.ts';
import { element, escapeXml } from '../svg/text.ts';
import { componentsOf, paintScene } from './scene.ts';

export type ShareOptions = Caption & {
  readonly name: string;
  /** Under the name: the shop's. */
  readonly shop: string;
};

/** Pixels: the size that pages which show links ask for (the Open Graph protocol names none; common practice). */
export const SHARE_BOX: Box = { x: 0, y: 0, width: 1200, height: 630 };

const SCENE_BOX: Box = { x: 440, y: 0, width: 760, height: 630 };
const TEXT_X = 72;
/** Room for the words, px. */
const TEXT_WIDTH = 420;
const NAME_PX = 62;
const UNDER_PX = 28;

const FACES = "Georgia, 'Times New Roman', 'DejaVu Serif', serif";

export function drawShare(
  design: Design,
  sequences: readonly (readonly Placed[])[],
  options: ShareOptions,
): string {
  const ink = mixInk(options.idPrefix);
  const ground = groundFor(componentsOf(sequences));
  const colour = ground.isDark ? '#f6f2ea' : '#2b2723';
  const words = shareWords(options.name, options.shop, colour);
  const cloth = paintGround(ink, SHARE_BOX, ground);
  const scene = paintScene(ink, design, sequences, SCENE_BOX);
  return svgDocument(options, SHARE_BOX, ink.definitions(), cloth + scene + words);
}

/** A name, and a line in small letters under it. */
export function shareWords(name: string, under: string, colour: string): string {
  const { lines, px } = fitName(name);
  const top = SHARE_BOX.height / 2 - ((lines.length - 1) * px * 1.15) / 2;
  const large = lines.map((line, at) =>
    element('text', { x: TEXT_X, y: top + at * px * 1.15, 'font-size': px }, escapeXml(line)),
  );
  const y = top + (lines.length - 1) * px * 1.15 + UNDER_PX * 2.2;
  const small = element('text', { x: TEXT_X, y, 'font-size': UNDER_PX, opacity: '.75' }, escapeXml(under));
  return element('g', { fill: colour, 'font-family': FACES }, large.join('') + small);
}

/** The name in at most three lines, smaller where a word is too long for one. */
function fitName(name: string): { lines: string[]; px: number } {
  const longest = Math.max(1, ...name.split(/\s+/).map((word) => word.length));
  const px = Math.min(NAME_PX, TEXT_WIDTH / (longest * LETTER_SHARE));
  return { lines: breakLines(name, TEXT_WIDTH, px).slice(0, 3), px };
}
